// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/look/look.hpp"

#include <QApplication>
#include <QFontDatabase>
#include <QPalette>
#include <QStyle>
#include <QStyleFactory>
#include <QWidget>

namespace clampwright::desk {

namespace {

QPalette palette_of(const Inks& inks) {
  QPalette palette;
  const auto set = [&](QPalette::ColorRole ink, QPalette::ColorRole ground, const Pair& pair) {
    palette.setColor(ink, pair.ink);
    palette.setColor(ground, pair.ground);
  };
  set(QPalette::WindowText, QPalette::Window, inks.page);
  set(QPalette::Text, QPalette::Base, inks.field);
  set(QPalette::ButtonText, QPalette::Button, inks.button);
  set(QPalette::HighlightedText, QPalette::Highlight, inks.chosen);
  set(QPalette::ToolTipText, QPalette::ToolTipBase, inks.field);
  palette.setColor(QPalette::PlaceholderText, inks.hint.ink);
  palette.setColor(QPalette::AlternateBase, inks.page.ground);
  palette.setColor(QPalette::Link, inks.turn.ink);
  palette.setColor(QPalette::LinkVisited, inks.turn.ink);
  palette.setColor(QPalette::Mid, inks.rule.ink);
  palette.setColor(QPalette::Dark, inks.rule.ink);
  for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
    palette.setColor(QPalette::Disabled, role, inks.off.ink);
  palette.setColor(QPalette::Disabled, QPalette::Button, inks.off.ground);
  return palette;
}

// Names of colours and lengths in the sheet below, and what they are.
QString filled(QString sheet, const Look& look) {
  const Inks& c = look.colours();
  const std::pair<const char*, QString> values[] = {
      {"@page-ground", c.page.ground.name()},
      {"@page", c.page.ink.name()},
      {"@quiet", c.quiet.ink.name()},
      {"@field-ground", c.field.ground.name()},
      {"@field", c.field.ink.name()},
      {"@chosen-ground", c.chosen.ground.name()},
      {"@chosen", c.chosen.ink.name()},
      {"@button-ground", c.button.ground.name()},
      {"@button", c.button.ink.name()},
      {"@off-ground", c.off.ground.name()},
      {"@off", c.off.ink.name()},
      {"@refusal", c.refusal.ink.name()},
      {"@banner-ground", c.banner.ground.name()},
      {"@banner", c.banner.ink.name()},
      {"@rule", c.rule.ink.name()},
      {"@focus", c.focus.ink.name()},
      {"@target", QString::number(look.target() - 4)}, // the frame adds two on each side
      {"@heading", QString::number(look.heading())},
      {"@text", QString::number(look.text())},
      {"@small", QString::number(look.small())},
      {"@gap", QString::number(look.gap())},
      {"@half", QString::number(look.gap() / 2)},
  };
  for (const auto& [name, value] : values)
    sheet.replace(QLatin1String(name), value);
  return sheet;
}

constexpr const char* k_sheet = R"(
QWidget { font-size: @textpx; }
QPushButton, QToolButton, QComboBox, QLineEdit, QDateEdit, QCheckBox, QRadioButton { min-height: @targetpx; }
QPushButton, QToolButton { min-width: @targetpx; padding: 0 @gappx; border: 2px solid @rule; border-radius: 4px;
  background: @button-ground; color: @button; }
QPushButton:disabled, QToolButton:disabled { background: @off-ground; color: @off; border-style: dashed; }
QPushButton:checked, QToolButton:checked { background: @chosen-ground; color: @chosen; }
QPushButton:pressed, QToolButton:pressed { background: @chosen-ground; color: @chosen; }
QPushButton:focus, QToolButton:focus, QComboBox:focus, QLineEdit:focus, QAbstractItemView:focus, QTextEdit:focus,
  QCheckBox:focus { border: 2px solid @focus; }
QCheckBox { border: 2px solid transparent; spacing: @halfpx; padding: 0 @halfpx; }
QCheckBox::indicator { width: @textpx; height: @textpx; border: 2px solid @rule; background: @field-ground; }
QCheckBox::indicator:checked { background: @focus; }
QLineEdit, QComboBox { border: 2px solid @rule; border-radius: 4px; padding: 0 @halfpx; background: @field-ground;
  selection-background-color: @chosen-ground; selection-color: @chosen; }
QComboBox { padding-right: @targetpx; }
QComboBox::drop-down { border: 0; width: @targetpx; }
QComboBox::down-arrow { image: none; }
QTableView::item { padding: 0 @halfpx; border: 0; background: transparent; }
QTableView::item:selected { padding: 0 @halfpx; background: @chosen-ground; color: @chosen; }
QLineEdit[refused="true"], QComboBox[refused="true"] { border: 2px dashed @refusal; }
QComboBox QAbstractItemView { background: @field-ground; color: @field; selection-background-color: @chosen-ground;
  selection-color: @chosen; }
QComboBox QAbstractItemView::item { min-height: @targetpx; }
QAbstractItemView { border: 2px solid transparent; background: @page-ground; color: @page;
  selection-background-color: @chosen-ground; selection-color: @chosen; outline: none; }
QTextEdit, QTextBrowser, QScrollArea { border: 2px solid transparent; background: @page-ground; color: @page; }
QScrollArea > QWidget > QWidget { background: @page-ground; }
QLabel[kind="understood"] { color: @quiet; font-size: @smallpx; }
QLabel[kind="refusal"] { color: @refusal; font-size: @smallpx; font-weight: bold; }
QLabel[kind="heading"] { font-size: @headingpx; font-weight: bold; }
QLabel[kind="part"] { font-weight: bold; }
QLabel[kind="banner"] { background: @banner-ground; color: @banner; font-weight: bold; padding: @halfpx @gappx; }
QMenuBar { background: @page-ground; color: @page; }
QMenuBar::item { padding: @halfpx @gappx; background: transparent; min-height: @targetpx; }
QMenuBar::item:selected, QMenu::item:selected { background: @chosen-ground; color: @chosen; }
QMenu { background: @field-ground; color: @field; border: 2px solid @rule; }
QMenu::item { padding: 0 @gappx 0 @gappx; min-height: @targetpx; min-width: 12em; }
QHeaderView::section { background: @page-ground; color: @page; border: 0; border-bottom: 2px solid @rule;
  padding: @halfpx; font-weight: bold; min-height: @targetpx; }
QSplitter::handle { background: @rule; width: 2px; }
)";

} // namespace

Theme system_theme() {
  const QPalette palette = QGuiApplication::palette();
  const bool light_on_dark =
      palette.color(QPalette::WindowText).lightnessF() > palette.color(QPalette::Window).lightnessF();
  return light_on_dark ? Theme::dark : Theme::light;
}

QFont text_font(const Look& look) {
  QFont font = QFontDatabase::systemFont(QFontDatabase::GeneralFont);
  font.setPixelSize(look.text());
  if (look.theme == Theme::paper) {
    // Any spacing of letters, however small, turns ligatures off: in a PDF file a search for "flats" finds no "ﬂats".
    font.setLetterSpacing(QFont::PercentageSpacing, 100.02);
    // Fitted to the pixels of a screen the letters of drawings, which are scaled, would stand apart.
    font.setHintingPreference(QFont::PreferNoHinting);
  }
  return font;
}

QString style_sheet(const Look& look) { return filled(QString::fromUtf8(k_sheet), look); }

void put_on(QApplication& application, const Look& look) {
  // The system's own style paints with colours of its own, which no test of ours has judged.
  application.setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
  application.setPalette(palette_of(look.colours()));
  application.setFont(text_font(look));
  application.setStyleSheet(style_sheet(look));
}

void set_kind(QWidget& label, const char* kind) {
  label.setProperty("kind", QLatin1String(kind));
  // The style looks at a property only when it is put on.
  label.style()->unpolish(&label);
  label.style()->polish(&label);
}

} // namespace clampwright::desk
