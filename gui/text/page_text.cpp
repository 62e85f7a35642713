// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/text/page_text.hpp"

#include <algorithm>

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QRegularExpression>
#include <QTextBlock>
#include <QTextCursor>
#include <QTextTable>

#include "core/quantity/write.hpp"
#include "core/report/text_writer.hpp"
#include "core/report/wording.hpp"
#include "gui/look/utf8.hpp"
#include "gui/text/drawn_object.hpp"
#include "gui/text/wording.hpp"

namespace clampwright::desk {

namespace {

QString tr(const char* english) { return QCoreApplication::translate("PageText", english); }

// Word and shape say the severity; no colour is needed.
QString severity_sign(finding::Severity severity) {
  switch (severity) {
  case finding::Severity::stop:
    return QStringLiteral("■");
  case finding::Severity::mind:
    return QStringLiteral("△");
  case finding::Severity::note:
    return QStringLiteral("•");
  }
  return {};
}

// In the language spoken, what may still be said called as the page's blanks are.
QString said_on(const PageContent& content, std::string_view english) {
  return by_blanks(worded(english), content.blank_names);
}

// How a value came about: in words, as "of the thread", or a formula, which is the same in every language but for words
// that stand in it: "m_i + the longer of A and B".
QString formula_words(const std::string& formula) {
  const QString text = from_utf8(formula);
  static const QString k_signs = QStringLiteral("·/√()²+");
  static const QRegularExpression k_words(QStringLiteral("\\b(?:of|the|is|less|stated|where|limits)\\b"));
  const bool is_formula = std::ranges::any_of(text, [](QChar sign) { return k_signs.contains(sign); });
  return is_formula && !k_words.match(text).hasMatch() ? text : worded(formula);
}

// The first figure and those that stand against it are the largest.
QFont figure_font(const PageContent& content, const Look& look, std::size_t number) {
  QFont font = text_font(look);
  font.setPixelSize(number == 0 || content.figures[number].is_rival ? look.figure() : look.figure() * 3 / 5);
  font.setBold(true);
  return font;
}

// With what stands around it in its cell.
double figure_width(const PageContent& content, const Look& look, std::size_t number) {
  return QFontMetricsF(figure_font(content, look, number)).horizontalAdvance(content.figures[number].value) +
         look.gap() * 3.5;
}

// Between the margins of the page.
double room(const Look& look, int width) { return width - look.gap() * 4.5; }

class PageWriter {
 public:
  PageWriter(QTextDocument& text, const PageContent& content, const Look& look, const PageState& state)
      : content_(content), look_(look), state_(state), cursor_(&text), objects_(text, look) {
    QFont font = text_font(look);
    text.setDefaultFont(font);
    text.setDocumentMargin(look.gap() * 2);
    text.setUndoRedoEnabled(false);
  }

  void write() {
    // In one block: laid out anew at each cell, a table of some hundred rows would take half a minute.
    cursor_.beginEditBlock();
    write_all();
    cursor_.endEditBlock();
  }

 private:
  void write_all() {
    const report::Document& document = content_.document;
    block(0, true);
    if (!content_.where.isEmpty()) {
      put(content_.where, small());
      block(0, true);
    }
    put(say(document.title), format(look_.heading(), true));
    // On the screen it stands above every page.
    if (!document.banner.empty() && on_paper()) {
      block(look_.gap() / 2, true);
      QTextCharFormat banner = format(look_.text(), true);
      banner.setForeground(look_.colours().banner.ink);
      banner.setBackground(look_.colours().banner.ground);
      put(QStringLiteral(" %1 ").arg(say(document.banner)), banner);
    }
    figures();
    flags();
    drawings(0);
    int number = 0;
    for (const report::Section& section : document.sections)
      this->section(section, ++number);
    remarks();
    working();
    sources();
    if (document.has_foot) {
      block(look_.gap() * 2);
      put(say(report::foot_line()), format(look_.text(), true));
    }
  }

  [[nodiscard]] QString say(std::string_view english) const { return said_on(content_, english); }
  [[nodiscard]] bool on_paper() const { return look_.theme == Theme::paper; }

  [[nodiscard]] QTextCharFormat format(int pixels, bool bold = false) const {
    QTextCharFormat out;
    QFont font = text_font(look_);
    font.setPixelSize(pixels);
    font.setBold(bold);
    out.setFont(font);
    out.setForeground(look_.colours().page.ink);
    return out;
  }
  [[nodiscard]] QTextCharFormat small() const {
    QTextCharFormat out = format(look_.small());
    out.setForeground(look_.colours().quiet.ink);
    return out;
  }

  void put(const QString& text, const QTextCharFormat& how) { cursor_.insertText(text, how); }

  // A new paragraph, so far below the last one.
  void block(int above, bool keeps_next = false) {
    QTextBlockFormat how;
    how.setTopMargin(above);
    if (keeps_next) how.setProperty(k_keeps_next, true);
    // There is an empty one at the beginning and behind a table.
    if (empty_) {
      cursor_.setBlockFormat(how);
      empty_ = false;
    } else {
      cursor_.insertBlock(how);
    }
  }

  QTextTable* table(int rows, int columns, const QList<QTextLength>& widths) {
    QTextTableFormat how;
    how.setBorder(0);
    how.setCellPadding(look_.gap() / 4.0);
    how.setCellSpacing(0);
    how.setTopMargin(look_.gap() / 2.0);
    how.setBottomMargin(look_.gap()); // the paragraph behind it loses its own distance
    how.setColumnWidthConstraints(widths);
    return cursor_.insertTable(rows, columns, how);
  }
  void behind_table() {
    cursor_.movePosition(QTextCursor::End);
    empty_ = true;
  }

  void figures() {
    int from = 0;
    for (const int count : figures_in_rows(content_, look_, state_.width)) {
      figure_row(from, count);
      from += count;
    }
  }

  void figure_row(int from, int count) {
    QTextTable* cells = table(1, count, {});
    for (int i = 0; i < count; ++i) {
      const auto number = static_cast<std::size_t>(from + i);
      const Figure& figure = content_.figures[number];
      const QFont font = figure_font(content_, look_, number);
      QTextTableCell place = cells->cellAt(0, i);
      QTextTableCellFormat apart;
      apart.setRightPadding(look_.gap() * 3);
      // All stand on one line.
      const QFont first = figure_font(content_, look_, static_cast<std::size_t>(from));
      apart.setTopPadding(std::max(0.0, QFontMetricsF(first).ascent() - QFontMetricsF(font).ascent()));
      place.setFormat(apart);
      QTextCursor cell = place.firstCursorPosition();
      QTextCharFormat how = format(look_.figure(), true);
      how.setFont(font);
      QTextBlockFormat whole;
      whole.setNonBreakableLines(state_.width > 0 &&
                                 figure_width(content_, look_, number) <= room(look_, state_.width));
      cell.setBlockFormat(whole);
      cell.insertText(figure.value, how);
      cell.insertBlock({});
      cell.insertText(figure.says, format(look_.text()));
      for (const QString& line : figure.more) {
        cell.insertBlock();
        cell.insertText(line, format(look_.text()));
      }
    }
    behind_table();
  }

  void flags() {
    for (const QString& flag : content_.flags) {
      block(look_.gap() / 2);
      put(flag, format(look_.heading(), true));
    }
  }

  void draw(const Drawing& drawing) {
    const bool has_words = !drawing.in_words.isEmpty();
    block(look_.gap(), has_words);
    objects_.put(cursor_, drawing);
    if (!has_words) return;
    block(0);
    put(drawing.in_words, small());
  }

  void drawings(int behind_section) {
    for (const Placed& placed : content_.drawings)
      if (placed.behind_section == behind_section) draw(placed.drawing);
  }

  [[nodiscard]] bool is_shown_above(const std::string& label) const {
    return std::ranges::find(content_.rows_shown_above, label) != content_.rows_shown_above.end();
  }

  void section(const report::Section& section, int number) {
    if (!section.heading.empty()) {
      block(look_.gap() * 2, true);
      put(say(section.heading), format(look_.text(), true));
    }
    std::vector<const Placed*> waiting;
    for (const Placed& placed : content_.drawings)
      if (placed.behind_section == number) waiting.push_back(&placed);
    std::vector<report::Row> rows;
    std::string label;
    bool shown_above = false;
    // The drawings of the row that ends here, behind what stands above them.
    const auto draw_behind = [&](const std::string& row) {
      for (const Placed*& placed : waiting) {
        if (placed == nullptr || placed->behind_row != row) continue;
        row_table(rows);
        rows.clear();
        draw(placed->drawing);
        placed = nullptr;
      }
    };
    for (const report::Row& row : section.rows) {
      // A row without a label goes on from the one above it.
      if (!row.label.empty()) {
        if (!label.empty()) draw_behind(label);
        label = row.label;
        shown_above = is_shown_above(label);
      }
      if (!shown_above) rows.push_back(row);
    }
    if (!label.empty()) draw_behind(label);
    row_table(rows);
    if (section.table) whole_table(*section.table);
    for (const Placed* placed : waiting)
      if (placed != nullptr) draw(placed->drawing);
  }

  void row_table(const std::vector<report::Row>& rows) {
    if (std::ranges::all_of(rows, [](const report::Row& row) { return row.label.empty(); })) return points(rows);
    QTextTable* cells =
        table(static_cast<int>(rows.size()), 2,
              {QTextLength(QTextLength::PercentageLength, 22), QTextLength(QTextLength::PercentageLength, 78)});
    for (int i = 0; i < cells->rows(); ++i) {
      const report::Row& row = rows[static_cast<std::size_t>(i)];
      QTextCharFormat label = format(look_.text());
      label.setForeground(look_.colours().quiet.ink);
      cells->cellAt(i, 0).firstCursorPosition().insertText(say(row.label), label);
      cells->cellAt(i, 1).firstCursorPosition().insertText(say(row.value), format(look_.text()));
    }
    behind_table();
  }

  // Rows that are all text: a column of labels would stand empty beside them.
  void points(const std::vector<report::Row>& rows) {
    for (const report::Row& row : rows) {
      block(look_.gap() / 2);
      // Some come with a dash of their own.
      QString point = say(row.value);
      if (point.startsWith(QStringLiteral("– "))) point.remove(0, 2);
      put(QStringLiteral("• ") + point, format(look_.text()));
    }
  }

  void whole_table(const report::Table& given) {
    if (!given.over.empty()) {
      block(look_.gap(), true);
      put(say(given.over), small());
    }
    const auto columns = static_cast<int>(given.columns.size());
    const bool grouped =
        std::ranges::any_of(given.columns, [](const report::Column& column) { return !column.group.empty(); });
    const int heads = grouped ? 2 : 1;
    QTextTable* cells = table(heads + static_cast<int>(given.rows.size()), columns, {});
    QTextTableFormat how = cells->format();
    how.setHeaderRowCount(heads); // again on each printed page
    cells->setFormat(how);
    if (grouped) group_heads(given, *cells);
    for (int c = 0; c < columns; ++c) {
      const report::Column& column = given.columns[static_cast<std::size_t>(c)];
      cell(*cells, heads - 1, c, say(column.heading), format(look_.small(), true), column.is_number);
      for (std::size_t r = 0; r < given.rows.size(); ++r)
        cell(*cells, heads + static_cast<int>(r), c, say(given.rows[r][static_cast<std::size_t>(c)]),
             format(look_.text(), column.is_main), column.is_number);
    }
    behind_table();
    if (given.under.empty()) return;
    block(look_.gap() / 2);
    put(say(given.under), small());
  }

  void group_heads(const report::Table& given, QTextTable& cells) {
    for (std::size_t c = 0; c < given.columns.size();) {
      std::size_t end = c + 1;
      const std::string& group = given.columns[c].group;
      while (end < given.columns.size() && !group.empty() && given.columns[end].group == group)
        ++end;
      if (end > c + 1) cells.mergeCells(0, static_cast<int>(c), 1, static_cast<int>(end - c));
      cell(cells, 0, static_cast<int>(c), say(group), format(look_.small(), true), false);
      c = end;
    }
  }

  void cell(QTextTable& cells, int row, int column, const QString& text, const QTextCharFormat& how,
            bool to_the_right) const {
    QTextTableCell place = cells.cellAt(row, column);
    QTextTableCellFormat apart = place.format().toTableCellFormat();
    if (column > 0) apart.setLeftPadding(look_.gap());
    place.setFormat(apart);
    QTextCursor cursor = place.firstCursorPosition();
    QTextBlockFormat align;
    align.setAlignment(to_the_right ? Qt::AlignRight : Qt::AlignLeft);
    cursor.setBlockFormat(align);
    cursor.insertText(text, how);
  }

  void remarks() {
    for (const report::Remark& remark : content_.document.remarks) {
      block(look_.gap());
      const bool stop = remark.severity == finding::Severity::stop;
      put(QStringLiteral("%1 %2  ").arg(severity_sign(remark.severity), say(report::severity_word(remark.severity))),
          format(look_.text(), true));
      put(say(remark.text), format(look_.text(), stop));
      put(QStringLiteral(" [%1]").arg(from_utf8(remark.code)), small());
    }
  }

  // Something that can be opened: on the screen a line to follow, on paper all of it or nothing.
  bool unfolded(const char* link, bool open, const QString& heading, const QString& folded) {
    if (on_paper() && !open) return false;
    block(look_.gap() * 2, open);
    if (on_paper()) {
      put(heading, format(look_.text(), true));
      return true;
    }
    QTextCharFormat how = format(look_.text(), true);
    how.setAnchor(true);
    how.setAnchorHref(QLatin1String(link));
    how.setForeground(look_.colours().turn.ink);
    how.setFontUnderline(true);
    put(open ? heading : folded, how);
    return open;
  }

  void working() {
    const Working& working = content_.document.working;
    if (working.empty()) return;
    const QString what = content_.document.working_for.empty()
                             ? tr("The working")
                             : tr("The working for %1").arg(say(content_.document.working_for));
    if (!unfolded(k_working_link, state_.working, what, tr("Show the working (%1 steps)").arg(working.size()))) return;
    for (const Step& step : working) {
      block(look_.gap() / 2);
      const QString unit = from_utf8(step.unit);
      const QString value = from_utf8(quantity::write_number(step.value, 7)) +
                            (unit.isEmpty() || unit == QStringLiteral("°") ? unit : QStringLiteral(" ") + unit);
      put(QStringLiteral("%1 = %2 = ").arg(from_utf8(step.symbol), formula_words(step.formula)), format(look_.text()));
      put(value, format(look_.text(), true));
      put(QStringLiteral("   (%1; %2)").arg(say(step.meaning), say(step.source)), small());
    }
  }

  void sources() {
    const auto& sources = content_.document.sources;
    if (sources.empty()) return;
    const QString folded = tr("Show the sources (%1)").arg(sources.size());
    if (!unfolded(k_sources_link, state_.sources, tr("Sources"), folded)) return;
    for (const Source& source : sources) {
      block(look_.gap() / 4);
      put(from_utf8(report::full_source(source)), small());
    }
  }

  const PageContent& content_;
  const Look& look_;
  const PageState& state_;
  QTextCursor cursor_;
  DrawnObjects objects_;
  bool empty_ = true;
};

} // namespace

std::vector<int> figures_in_rows(const PageContent& content, const Look& look, int width) {
  std::vector<int> rows;
  double left = 0;
  for (std::size_t i = 0; i < content.figures.size(); ++i) {
    const double wanted = figure_width(content, look, i);
    if (rows.empty() || (width > 0 && wanted > left)) {
      rows.push_back(0);
      left = room(look, width);
    }
    ++rows.back();
    left -= wanted;
  }
  return rows;
}

std::unique_ptr<QTextDocument> page_text(const PageContent& content, const Look& look, const PageState& state) {
  auto text = std::make_unique<QTextDocument>();
  PageWriter(*text, content, look, state).write();
  return text;
}

QString plain_text(const PageContent& content) {
  report::Document document = content.document;
  for (Step& step : document.working)
    step.formula = to_utf8(formula_words(step.formula));
  return from_utf8(
      report::write_text_in(document, [&](std::string_view english) { return to_utf8(said_on(content, english)); }));
}

} // namespace clampwright::desk
