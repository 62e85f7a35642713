// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/sequence_drawing.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include <fmt/format.h>

#include "core/report/html_writer.hpp"
#include "core/report/sequence_report.hpp"
#include "core/text/plain_text.hpp"

namespace clampwright::report {

namespace {

using tightening::Pattern;
using tightening::Sequence;

constexpr double k_margin = 10;
constexpr double k_bolt_radius = 8;
constexpr double k_spacing = 22;      // between neighbours
constexpr double k_least_circle = 30; // radius
constexpr double k_least_width = 150;
constexpr double k_title_size = 6;
constexpr double k_text_size = 4;
constexpr double k_label_size = 3.6;
constexpr double k_line_pitch = 1.5;      // line to line, over the size
constexpr double k_letter_width = 0.55;   // over the size; a bold title in a wide face needs about as much
constexpr double k_label_distance = 12.5; // from a bolt's middle to the middle of its label

// Lines of at most so many letters, broken between words.
std::vector<std::string> wrapped(std::string_view words, std::size_t letters) {
  std::vector<std::string> lines(1);
  while (!words.empty()) {
    const std::size_t space = std::min(words.find(' '), words.size());
    const std::string_view word = words.substr(0, space);
    if (!lines.back().empty() && text::letters(lines.back()).size() + 1 + text::letters(word).size() > letters)
      lines.emplace_back();
    if (!lines.back().empty()) lines.back() += ' ';
    lines.back() += word;
    words.remove_prefix(std::min(words.size(), space + 1));
  }
  return lines;
}

// Writes lines of text one below the other.
class Lines {
 public:
  Lines(SequenceDrawing& drawing, double top) : drawing_(drawing), y_(top) {}

  void add(std::string_view words, double size, bool is_bold) {
    const auto letters = static_cast<std::size_t>((drawing_.width - 2 * k_margin) / (k_letter_width * size));
    for (std::string& line : wrapped(words, letters)) {
      drawing_.texts.push_back({k_margin, y_ + size * k_line_pitch / 2, size, Anchor::left, is_bold, std::move(line)});
      y_ += size * k_line_pitch;
    }
  }
  void skip(double height) { y_ += height; }
  [[nodiscard]] double bottom() const { return y_; }

 private:
  SequenceDrawing& drawing_;
  double y_;
};

double circle_radius(int bolts) { return std::max(k_least_circle, bolts * k_spacing / (2 * std::numbers::pi)); }

double width_of(const Sequence& sequence) {
  switch (sequence.pattern) {
  case Pattern::circle:
    return 2 * (circle_radius(sequence.bolts) + k_label_distance + k_label_size + k_margin);
  case Pattern::row:
    return sequence.bolts * k_spacing + 2 * k_margin;
  case Pattern::two_rows:
    return sequence.bolts / 2 * k_spacing + 2 * k_margin;
  }
  return 0;
}

// The bolts, and the lines that they stand on. Returns where they end.
double add_circle(SequenceDrawing& drawing, const Sequence& sequence, double top) {
  const double radius = circle_radius(sequence.bolts);
  const double x = drawing.width / 2;
  const double y = top + radius + k_label_distance + k_label_size;
  drawing.circles.push_back({x, y, radius});
  for (int i = 0; i < sequence.bolts; ++i) {
    const double angle = 2 * std::numbers::pi * i / sequence.bolts;
    const double right = std::sin(angle);
    const double up = std::cos(angle);
    const double label = radius + k_label_distance;
    drawing.bolts.push_back({x + radius * right, y - radius * up, i + 1, 0, x + label * right, y - label * up});
  }
  return y + radius + k_label_distance + k_label_size;
}

double add_row(SequenceDrawing& drawing, int first, int bolts, double top, bool labels_above) {
  const double y = top + (labels_above ? k_label_distance + k_label_size : k_bolt_radius);
  const double left = (drawing.width - (bolts - 1) * k_spacing) / 2;
  drawing.lines.push_back({left, y, left + (bolts - 1) * k_spacing, y});
  for (int i = 0; i < bolts; ++i) {
    const double x = left + i * k_spacing;
    drawing.bolts.push_back({x, y, first + i, 0, x, labels_above ? y - k_label_distance : y + k_label_distance});
  }
  return y + (labels_above ? k_bolt_radius : k_label_distance + k_label_size);
}

double add_bolts(SequenceDrawing& drawing, const Sequence& sequence, double top) {
  switch (sequence.pattern) {
  case Pattern::circle:
    return add_circle(drawing, sequence, top);
  case Pattern::row:
    return add_row(drawing, 1, sequence.bolts, top, true);
  case Pattern::two_rows: {
    const int half = sequence.bolts / 2;
    const double middle = add_row(drawing, 1, half, top, true);
    return add_row(drawing, half + 1, half, middle + k_spacing, false);
  }
  }
  return top;
}

std::string notes_of(const Sequence& sequence, std::string_view seen_from) {
  return fmt::format("Large: the order. Small: the positions, {}, {}.", positions_words(sequence.pattern), seen_from);
}

std::string rounds_of(const Sequence& sequence) {
  if (sequence.undo) return "Ease each by a quarter of a turn first, in this order; then half a turn; then right off.";
  return fmt::format("Rounds, where the page names no others: {}; then {}.", rounds_words(sequence),
                     then_words(sequence));
}

std::string number(double value) { return fmt::format("{:.2f}", value); }

std::string svg_text(double x, double y, double size, Anchor anchor, bool is_bold, std::string_view words) {
  // The middle of a line lies about a third of its height above its foot, in every face.
  return fmt::format("<text x=\"{}\" y=\"{}\" font-size=\"{}\"{}{}>{}</text>\n", number(x), number(y + 0.35 * size),
                     number(size), anchor == Anchor::middle ? " text-anchor=\"middle\"" : "",
                     is_bold ? " font-weight=\"bold\"" : "", html_escaped(words));
}

} // namespace

SequenceDrawing sequence_drawing(const Sequence& sequence, std::string_view heading, std::string_view seen_from,
                                 std::string_view banner) {
  SequenceDrawing drawing;
  drawing.title = fmt::format("{}{}: {} order", heading.empty() ? "" : std::string(heading) + ", ",
                              bolts_words(sequence), sequence.undo ? "loosening" : "tightening");
  drawing.description = fmt::format("{}: {}. {} {}", drawing.title, order_words(sequence.order),
                                    notes_of(sequence, seen_from), rounds_of(sequence));
  drawing.width = std::max(k_least_width, width_of(sequence));
  drawing.bolt_radius = k_bolt_radius;
  drawing.order_size = 8;
  drawing.label_size = k_label_size;
  Lines above(drawing, k_margin);
  above.add(drawing.title, k_title_size, true);
  if (!banner.empty()) above.add(banner, k_text_size, true);
  above.skip(2);
  Lines below(drawing, add_bolts(drawing, sequence, above.bottom()) + 5);
  for (DrawnBolt& bolt : drawing.bolts)
    bolt.turn = static_cast<int>(std::ranges::find(sequence.order, bolt.position) - sequence.order.begin()) + 1;
  below.add(notes_of(sequence, seen_from), k_text_size, false);
  below.add(rounds_of(sequence), k_text_size, false);
  below.add("Computed. The order on the maker's page ranks above it.", k_text_size, false);
  drawing.height = below.bottom() + k_margin;
  return drawing;
}

std::string write_svg(const SequenceDrawing& drawing) {
  std::string svg = fmt::format(
      "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
      "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{0}mm\" height=\"{1}mm\" viewBox=\"0 0 {0} {1}\" role=\"img\" "
      "font-family=\"Noto Sans, DejaVu Sans, Liberation Sans, Arial, "
      "sans-serif\">\n<title>{2}</title>\n<desc>{3}</desc>\n"
      "<rect width=\"{0}\" height=\"{1}\" fill=\"white\"/>\n",
      number(drawing.width), number(drawing.height), html_escaped(drawing.title), html_escaped(drawing.description));
  for (const DrawnCircle& circle : drawing.circles)
    svg += fmt::format("<circle cx=\"{}\" cy=\"{}\" r=\"{}\" fill=\"none\" stroke=\"black\" stroke-width=\"0.3\"/>\n",
                       number(circle.x), number(circle.y), number(circle.radius));
  for (const DrawnLine& line : drawing.lines)
    svg += fmt::format("<line x1=\"{}\" y1=\"{}\" x2=\"{}\" y2=\"{}\" stroke=\"black\" stroke-width=\"0.3\"/>\n",
                       number(line.x1), number(line.y1), number(line.x2), number(line.y2));
  for (const DrawnBolt& bolt : drawing.bolts) {
    svg += fmt::format("<circle cx=\"{}\" cy=\"{}\" r=\"{}\" fill=\"white\" stroke=\"black\" stroke-width=\"0.6\"/>\n",
                       number(bolt.x), number(bolt.y), number(drawing.bolt_radius));
    svg += svg_text(bolt.x, bolt.y, drawing.order_size, Anchor::middle, true, fmt::format("{}", bolt.turn));
    svg += svg_text(bolt.label_x, bolt.label_y, drawing.label_size, Anchor::middle, false,
                    fmt::format("{}", bolt.position));
  }
  for (const DrawnText& text : drawing.texts)
    svg += svg_text(text.x, text.y, text.size, text.anchor, text.is_bold, text.text);
  return svg + "</svg>\n";
}

} // namespace clampwright::report
