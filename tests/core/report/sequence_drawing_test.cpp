// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/sequence_drawing.hpp"

#include <cmath>
#include <set>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace clampwright::report {
namespace {

using testing::HasSubstr;
using testing::Not;
using tightening::Pattern;

SequenceDrawing drawing_of(Pattern pattern, int bolts, std::string_view heading = "") {
  tightening::Sequence sequence;
  sequence.pattern = pattern;
  sequence.bolts = bolts;
  sequence.order = tightening::order_of(pattern, bolts);
  sequence.passes = {0.5, 1.0};
  return sequence_drawing(sequence, heading, "looking at the heads");
}

template<class Function>
void for_every_drawing(Function function) {
  for (const Pattern pattern : {Pattern::circle, Pattern::row, Pattern::two_rows})
    for (int bolts = tightening::k_fewest_bolts; bolts <= tightening::k_most_bolts; ++bolts)
      if (tightening::check_bolts(pattern, bolts)) function(drawing_of(pattern, bolts));
}

} // namespace

TEST(SequenceDrawing, ShowsEveryBoltWithItsTurn) {
  for_every_drawing([](const SequenceDrawing& drawing) {
    std::set<int> turns;
    std::set<int> positions;
    for (const DrawnBolt& bolt : drawing.bolts) {
      turns.insert(bolt.turn);
      positions.insert(bolt.position);
    }
    EXPECT_EQ(turns.size(), drawing.bolts.size()) << drawing.title;
    EXPECT_EQ(positions.size(), drawing.bolts.size()) << drawing.title;
    EXPECT_EQ(*turns.begin(), 1);
    EXPECT_EQ(*turns.rbegin(), static_cast<int>(drawing.bolts.size()));
  });
}

TEST(SequenceDrawing, KeepsBoltsApartAndInsideThePicture) {
  for_every_drawing([](const SequenceDrawing& drawing) {
    for (const DrawnBolt& one : drawing.bolts) {
      EXPECT_GT(one.x - drawing.bolt_radius, 0) << drawing.title;
      EXPECT_LT(one.x + drawing.bolt_radius, drawing.width) << drawing.title;
      EXPECT_GT(one.label_y - drawing.label_size, 0) << drawing.title;
      EXPECT_LT(one.label_y + drawing.label_size, drawing.height) << drawing.title;
      for (const DrawnBolt& other : drawing.bolts) {
        if (one.position == other.position) continue;
        EXPECT_GT(std::hypot(one.x - other.x, one.y - other.y), 2 * drawing.bolt_radius) << drawing.title;
      }
    }
  });
}

TEST(SequenceDrawing, BeginsAtTheTopAndGoesClockwise) {
  const SequenceDrawing drawing = drawing_of(Pattern::circle, 4);
  const auto& bolts = drawing.bolts;
  EXPECT_LT(bolts[0].y, bolts[1].y);
  EXPECT_GT(bolts[1].x, bolts[0].x);
  EXPECT_GT(bolts[2].y, bolts[1].y);
  EXPECT_LT(bolts[3].x, bolts[2].x);
}

TEST(SequenceDrawing, SaysInWordsWhatItShows) {
  const SequenceDrawing drawing = drawing_of(Pattern::circle, 6);
  EXPECT_THAT(drawing.description, HasSubstr("1 4 2 5 3 6"));
  EXPECT_THAT(drawing.description, HasSubstr("clockwise from the top, looking at the heads"));
}

TEST(SequenceSvg, EscapesWhateverStandsInANameAndRunsNothing) {
  const std::string svg = write_svg(drawing_of(Pattern::row, 3, "a <b> & \"c\" </title><script>x</script>"));
  EXPECT_THAT(svg, HasSubstr("a &lt;b&gt; &amp;"));
  EXPECT_THAT(svg, Not(HasSubstr("<script")));
  EXPECT_THAT(svg, Not(HasSubstr("href")));
}

TEST(SequenceSvg, IsOnePictureInBlackAndWhite) {
  const std::string svg = write_svg(drawing_of(Pattern::two_rows, 10));
  EXPECT_TRUE(svg.starts_with("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg "));
  EXPECT_TRUE(svg.ends_with("</svg>\n"));
  for (const char* coloured : {"fill=\"#", "stroke=\"#", "rgb("})
    EXPECT_THAT(svg, Not(HasSubstr(coloured)));
}

} // namespace clampwright::report
