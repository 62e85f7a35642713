// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/look/inks.hpp"

#include <algorithm>
#include <cmath>

namespace clampwright::desk {

namespace {

Pair pair(QRgb ink, QRgb ground) { return {QColor(ink), QColor(ground)}; }

// Unbleached paper and ink.
Inks light() {
  constexpr QRgb k_page = 0xF5F0E6;
  constexpr QRgb k_ink = 0x1F1B16;
  return {.page = pair(k_ink, k_page),
          .quiet = pair(0x4A443A, k_page),
          .field = pair(k_ink, 0xFFFDF8),
          .hint = pair(0x575044, 0xFFFDF8),
          .chosen = pair(0xFFFDF8, 0x2B3F4A),
          .button = pair(k_ink, 0xE8E0D0),
          .off = pair(0x4A443A, 0xEFE9DC),
          .turn = pair(0x7A2C08, k_page),
          .refusal = pair(0x7A1C12, k_page),
          .banner = pair(k_ink, 0xE8D9B0),
          .rule = pair(0x8F8779, k_page),
          .focus = pair(0x66230A, k_page),
          .limit = pair(k_ink, k_page),
          .friction = pair(0x2B3F4A, k_page),
          .factor = pair(0x85785F, k_page),
          .sketch = pair(k_ink, k_page)};
}

Inks dark() {
  constexpr QRgb k_page = 0x1B1916;
  constexpr QRgb k_ink = 0xEFE8DA;
  return {.page = pair(k_ink, k_page),
          .quiet = pair(0xC8C0B0, k_page),
          .field = pair(k_ink, 0x26231F),
          .hint = pair(0xBDB5A5, 0x26231F),
          .chosen = pair(0x1B1916, 0xE6C68C),
          .button = pair(k_ink, 0x37332D),
          .off = pair(0xC8C0B0, 0x2A2723),
          .turn = pair(0xF2AC66, k_page),
          .refusal = pair(0xFFB4A4, k_page),
          .banner = pair(0x1B1916, 0xE6C68C),
          .rule = pair(0x756D60, k_page),
          .focus = pair(0xF9C48C, k_page),
          .limit = pair(k_ink, k_page),
          .friction = pair(0xA9C3CF, k_page),
          .factor = pair(0x8F846E, k_page),
          .sketch = pair(k_ink, k_page)};
}

Inks paper() {
  constexpr QRgb k_page = 0xFFFFFF;
  constexpr QRgb k_ink = 0x000000;
  return {.page = pair(k_ink, k_page),
          .quiet = pair(0x3A3A3A, k_page),
          .field = pair(k_ink, k_page),
          .hint = pair(0x3A3A3A, k_page),
          .chosen = pair(k_page, k_ink),
          .button = pair(k_ink, k_page),
          .off = pair(0x3A3A3A, k_page),
          .turn = pair(k_ink, k_page),
          .refusal = pair(k_ink, k_page),
          .banner = pair(k_ink, k_page),
          .rule = pair(0x707070, k_page),
          .focus = pair(k_ink, k_page),
          .limit = pair(k_ink, k_page),
          .friction = pair(0x303030, k_page),
          .factor = pair(0x808080, k_page),
          .sketch = pair(k_ink, k_page)};
}

// Relative luminance of sRGB (WCAG 2.2, from memory).
double luminance(const QColor& colour) {
  const auto linear = [](double c) { return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4); };
  return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) + 0.0722 * linear(colour.blueF());
}

} // namespace

const Inks& inks(Theme theme) {
  static const Inks on_light = light();
  static const Inks on_dark = dark();
  static const Inks on_paper = paper();
  return theme == Theme::light ? on_light : theme == Theme::dark ? on_dark : on_paper;
}

double contrast(const Pair& pair) {
  const double one = luminance(pair.ink);
  const double other = luminance(pair.ground);
  return (std::max(one, other) + 0.05) / (std::min(one, other) + 0.05);
}

std::vector<Demand> demands(const Inks& inks) {
  constexpr double k_text = 7;
  constexpr double k_line = 3;
  return {{"page", inks.page, k_text},
          {"quiet", inks.quiet, k_text},
          {"field", inks.field, k_text},
          {"hint", inks.hint, k_text},
          {"chosen", inks.chosen, k_text},
          {"button", inks.button, k_text},
          {"off", inks.off, k_text},
          {"turn", inks.turn, k_text},
          {"refusal", inks.refusal, k_text},
          {"banner", inks.banner, k_text},
          {"rule", inks.rule, k_line},
          {"focus", inks.focus, k_line},
          {"limit", inks.limit, k_line},
          {"friction", inks.friction, k_line},
          {"factor", inks.factor, k_line},
          {"sketch", inks.sketch, k_line},
          {"rule in a blank", {inks.rule.ink, inks.field.ground}, k_line},
          {"rule round a button", {inks.rule.ink, inks.page.ground}, k_line},
          {"focus of a blank", {inks.focus.ink, inks.field.ground}, k_line},
          {"focus against the rule in its place", {inks.focus.ink, inks.rule.ink}, k_line}};
}

} // namespace clampwright::desk
