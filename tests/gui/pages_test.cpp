// SPDX-License-Identifier: GPL-3.0-or-later
//
// How a document is cut into pages, by its pieces alone.
#include <random>

#include <gtest/gtest.h>

#include "gui/printing/paper_layout.hpp"

namespace clampwright::desk {

namespace {

double height_of(const PaperPage& page) {
  double sum = 0;
  for (const Slice& slice : page)
    sum += slice.height();
  return sum;
}

// On which page a piece stands whole; -1 for none.
int page_of(const std::vector<PaperPage>& pages, const Slice& piece) {
  for (std::size_t page = 0; page < pages.size(); ++page)
    for (const Slice& slice : pages[page])
      if (slice.top <= piece.top && piece.bottom <= slice.bottom) return static_cast<int>(page);
  return -1;
}

TEST(Pages, AreOneWhereAllFits) {
  const auto pages = cut_into_pages({{{0, 40}}, {{50, 100}}}, 100);
  ASSERT_EQ(pages.size(), 1U);
  ASSERT_EQ(pages[0].size(), 1U);
  EXPECT_EQ(pages[0][0].bottom, 100);
}

TEST(Pages, AreOneEmptyOneForNothing) { EXPECT_EQ(cut_into_pages({}, 100).size(), 1U); }

TEST(Pages, LeaveAPieceWhole) {
  const auto pages = cut_into_pages({{{0, 60}}, {{60, 120}}}, 100);
  ASSERT_EQ(pages.size(), 2U);
  EXPECT_EQ(page_of(pages, {60, 120}), 1);
}

TEST(Pages, KeepAHeadingWithItsPiece) {
  const auto pages = cut_into_pages({{{0, 60}}, {{60, 80}, true}, {{80, 120}}}, 100);
  ASSERT_EQ(pages.size(), 2U);
  EXPECT_EQ(page_of(pages, {60, 80}), 1);
}

TEST(Pages, RepeatTheHeadsOfATable) {
  std::vector<Piece> pieces{{{0, 10}, true, {0, 10}, true}};
  for (int row = 0; row < 20; ++row)
    pieces.push_back({{10.0 + 10 * row, 20.0 + 10 * row}, false, {0, 10}});
  const auto pages = cut_into_pages(pieces, 100);
  // The first page has the heads and nine rows, and so has each that follows: 9 + 9 + 2.
  ASSERT_EQ(pages.size(), 3U);
  EXPECT_EQ(height_of(pages[0]), 100);
  for (const std::size_t page : {1U, 2U}) {
    ASSERT_EQ(pages[page].size(), 2U);
    EXPECT_EQ(pages[page][0].top, 0);
    EXPECT_EQ(pages[page][0].bottom, 10);
  }
  EXPECT_EQ(height_of(pages[2]), 30);
}

TEST(Pages, CutWhatIsTallerThanAPageBetweenItsPieces) {
  const auto pages = cut_into_pages({{{0, 60}, true}, {{60, 120}, true}, {{120, 180}}}, 100);
  EXPECT_EQ(pages.size(), 3U);
}

// Whatever the pieces are: each stands whole on one page, in order, and no page is too full.
TEST(Pages, LoseNothing) {
  std::mt19937 dice(20261126);
  for (int run = 0; run < 200; ++run) {
    std::vector<Piece> pieces;
    double at = 0;
    for (int i = 0; i < 60; ++i) {
      const auto gap = static_cast<double>(dice() % 10);
      const auto height = static_cast<double>(5 + dice() % 90);
      pieces.push_back({{at + gap, at + gap + height}, dice() % 4 == 0});
      at += gap + height;
    }
    const auto pages = cut_into_pages(pieces, 100);
    int last = 0;
    for (std::size_t i = 0; i < pieces.size(); ++i) {
      const int page = page_of(pages, pieces[i].slice);
      ASSERT_GE(page, last) << "run " << run << ", piece " << i;
      last = page;
    }
    for (const PaperPage& page : pages)
      EXPECT_LE(height_of(page), 100) << "run " << run;
    EXPECT_EQ(last, static_cast<int>(pages.size()) - 1);
  }
}

} // namespace

} // namespace clampwright::desk
