// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>
#include <numbers>

#include <QPainter>
#include <gtest/gtest.h>

#include "gui/drawings/adaptor_picture.hpp"
#include "gui/drawings/bolt_order.hpp"
#include "gui/drawings/crank_picture.hpp"
#include "gui/drawings/hand_picture.hpp"
#include "gui/drawings/hold_curve.hpp"
#include "gui/drawings/strokes.hpp"
#include "gui/drawings/turn_arrows.hpp"
#include "specdb/question/hand_question.hpp"
#include "specdb/question/hold_question.hpp"
#include "specdb/question/sequence_question.hpp"
#include "tests/gui/drawn.hpp"

namespace clampwright::desk {

namespace {

using thread::Turn;

constexpr double k_degree = std::numbers::pi / 180;
const quantity::DisplayUnits k_metric;

crank::HoldAnswer held(const std::string& angle, const std::string& rod = "88mm") {
  static const specdb::Catalogue catalogue;
  specdb::HoldQuestion question;
  question.torque = "42 N.m";
  question.undo_torque = "60 N.m";
  question.stroke = "44 mm";
  question.rod = rod;
  question.angle = angle;
  question.tip_diameter = "10 mm";
  question.port_depth = "27 mm";
  question.stop_limit = "9 kN";
  question.stop_incline = "10 deg";
  question.turns = crank::WrenchTurns{Turn::anticlockwise, Turn::clockwise, "looking at the clutch"};
  return specdb::answer_hold(catalogue, question).value().answer;
}

specdb::WrenchSetReply set(const std::string& adaptor, const std::string& angle) {
  specdb::WrenchSetQuestion question;
  question.torque = "45 N.m";
  question.arm = "300 mm";
  question.adaptor = adaptor;
  question.adaptor_angle = angle;
  question.range = "10..200 N.m";
  question.step = "1 N.m";
  question.accuracy = "4%";
  return specdb::answer_wrench_set(question, {}).value();
}

crank::HandAnswer hand(const std::string& rotation, std::optional<thread::Hand> fitted = {}) {
  specdb::HandQuestion question;
  question.rotation = rotation;
  question.seen_from = "free-end";
  question.driver = "shaft";
  question.fitted = fitted;
  return specdb::answer_hand(question).value().answer;
}

Drawing order(const std::string& bolts, const std::string& pattern) {
  specdb::SequenceQuestion question;
  question.bolts = bolts;
  question.pattern = pattern;
  question.torque = "24 N.m";
  const auto reply = specdb::answer_sequence(question, nullptr).value();
  return bolt_order(report::sequence_drawing(reply.sequence, "", reply.seen_from));
}

std::vector<Drawing> all_drawings() {
  std::vector<Drawing> all;
  for (const Turn turn : {Turn::clockwise, Turn::anticlockwise})
    for (const bool left : {false, true})
      all.push_back(
          turn_arrows(turn, crank::reversed(turn), "looking at the nut that is farthest from the clutch", left));
  for (const char* pattern : {"circle", "row", "rows"})
    for (const char* bolts : {"4", "12", "24"})
      all.push_back(order(bolts, pattern));
  for (const char* angle : {"3 deg", "15 deg", "49 deg", "90 deg", "150 deg"})
    for (const char* rod : {"23 mm", "50 mm", "88 mm", "150 mm"})
      all.push_back(crank_picture(held(angle, rod), k_metric).value());
  for (const char* angle : {"0 deg", "30 deg", "60 deg", "90 deg", "135 deg", "180 deg"})
    for (const char* adaptor : {"30 mm", "150 mm"})
      all.push_back(adaptor_picture(set(adaptor, angle), k_metric).value());
  for (const auto fitted : {thread::Hand::left, thread::Hand::right})
    all.push_back(hand_picture(hand("clockwise", fitted)));
  return all;
}

TEST(Drawings, KeepToTheirSize) {
  for (const Drawing& drawing : all_drawings()) {
    const QImage image = painted(drawing);
    EXPECT_EQ(ink_outside(image), 0) << drawing.in_words.toStdString();
    EXPECT_TRUE(has_ink(image, image.rect())) << drawing.in_words.toStdString();
    EXPECT_LE(drawing.size.width(), 640) << drawing.in_words.toStdString();
  }
}

TEST(Drawings, LeaveThePainterAsItWas) {
  for (const Drawing& drawing : all_drawings()) {
    QImage image(10, 10, QImage::Format_RGB32);
    QPainter painter(&image);
    const QFont font = painter.font();
    const QTransform transform = painter.transform();
    drawing.paint(painter, inks(Theme::light));
    EXPECT_EQ(painter.font(), font) << drawing.name.toStdString();
    EXPECT_EQ(painter.transform(), transform) << drawing.name.toStdString();
  }
}

TEST(RoundArrow, IsTheOtherOneInAMirror) {
  const auto arrow = [](Turn turn) { return round_arrow({{80, 80}, 50, 20, -120, 130, turn}); };
  const QPainterPath one = arrow(Turn::clockwise);
  const QPainterPath other = QTransform(-1, 0, 0, 1, 160, 0).map(arrow(Turn::anticlockwise));
  ASSERT_EQ(one.elementCount(), other.elementCount());
  for (int i = 0; i < one.elementCount(); ++i) {
    EXPECT_NEAR(one.elementAt(i).x, other.elementAt(i).x, 1e-9);
    EXPECT_NEAR(one.elementAt(i).y, other.elementAt(i).y, 1e-9);
  }
}

// From 120° before the top over it to 130° behind: the point lies to the right of the middle and below it.
TEST(RoundArrow, GoesClockwiseOverTheTopToTheRight) {
  const QPainterPath arrow = round_arrow({{0, 0}, 50, 20, -120, 130, Turn::clockwise});
  EXPECT_TRUE(arrow.contains(QPointF(0, -50)));
  EXPECT_TRUE(arrow.contains(QPointF(49 * std::sin(128 * k_degree), -49 * std::cos(128 * k_degree))));
  EXPECT_FALSE(arrow.contains(QPointF(0, 50)));
  // The tail is as wide as the body, the head wider.
  EXPECT_FALSE(arrow.contains(QPointF(-65 * std::sin(100 * k_degree), -65 * std::cos(100 * k_degree))));
  EXPECT_TRUE(arrow.contains(QPointF(65 * std::sin(95 * k_degree), -65 * std::cos(95 * k_degree))));
}

// The point of an arrow is broader than its body, so it alone reaches far out: to the right of the second hexagon where
// tightening goes clockwise, to the left of it otherwise. Between arrow and words there is nothing else.
TEST(TurnArrows, PointTheWayTheyTurn) {
  const QRect left(k_around + 318, k_around, 12, 128);
  const QRect right(k_around + 462, k_around, 12, 128);
  for (const Turn turn : {Turn::clockwise, Turn::anticlockwise}) {
    const QImage image = painted(turn_arrows(turn, crank::reversed(turn), "looking at the nut", false));
    EXPECT_EQ(has_ink(image, right), turn == Turn::clockwise);
    EXPECT_EQ(has_ink(image, left), turn == Turn::anticlockwise);
  }
}

TEST(TurnArrows, SayBothTurnsAndTheSide) {
  const Drawing drawing = turn_arrows(Turn::anticlockwise, Turn::clockwise, "looking at the clutch", true);
  EXPECT_EQ(drawing.in_words,
            QStringLiteral("Undo clockwise, tighten anticlockwise, looking at the clutch. The thread is left-hand."));
}

TEST(BoltOrder, FillsTheFirstOne) {
  // Four in a circle of 30 mm: the first stands at the top and is filled, the third to the right is not.
  const Drawing drawing = order("4", "circle");
  const QImage image = painted(drawing);
  const double middle = drawing.size.width() / 2;
  const auto dark = [&](QPointF at) {
    return image.pixelColor(at.toPoint() + QPoint(k_around, k_around)).lightness() < 60;
  };
  const double scale = 2.6;
  const double top = drawing.size.height() / 2 - 30 * scale;
  EXPECT_TRUE(dark({middle - 14, top}));
  EXPECT_FALSE(dark({middle - 14, drawing.size.height() - top}));
}

TEST(BoltOrder, SaysTheOrder) {
  // ASME PCC-1, legacy star pattern of eight bolts, from memory: 1-5-3-7, 2-6-4-8.
  EXPECT_TRUE(order("8", "circle").in_words.contains(QStringLiteral("1 5 3 7 2 6 4 8")));
}

// By hand, for r = 22 mm, l = 88 mm at 60°: sin p = 22/88 × sin 60° = 0.216506, cos p = 0.976281, so the wrist stands
// 11 + 85.9127 = 96.9127 mm above the crank, 13.0873 mm below its top of 110 mm; the pin 11 mm up and 19.0526 mm aside.
TEST(CrankPicture, StandsAsTheSliderCrankDoes) {
  const crank::HoldAnswer answer = held("60 deg");
  const CrankLayout at = crank_layout(*answer.stop, Turn::clockwise);
  const auto mm = [&](double pixels) { return pixels / at.pixels_per_mm; };
  EXPECT_NEAR(mm(at.pin.x() - at.crank.x()), -19.0526, 1e-3);
  EXPECT_NEAR(mm(at.crank.y() - at.pin.y()), 11, 1e-3);
  EXPECT_NEAR(mm(at.crank.y() - at.wrist.y()), 96.9127, 1e-3);
  EXPECT_NEAR(mm(at.crown - at.crown_top), 13.0873, 1e-3);
  EXPECT_NEAR(mm(std::hypot(at.pin.x() - at.wrist.x(), at.pin.y() - at.wrist.y())), 88, 1e-3);
  // Turned the other way the pin rises on the other side.
  const CrankLayout other = crank_layout(*answer.stop, Turn::anticlockwise);
  EXPECT_NEAR(other.pin.x() - other.crank.x(), at.crank.x() - at.pin.x(), 1e-9);
}

TEST(CrankPicture, IsPaintedWhereItStands) {
  for (const char* angle : {"45 deg", "60 deg", "120 deg"}) {
    const crank::HoldAnswer answer = held(angle);
    const CrankLayout at = crank_layout(*answer.stop, Turn::anticlockwise);
    const QImage image = painted(*crank_picture(answer, k_metric));
    EXPECT_TRUE(has_ink_at(image, at.pin)) << angle;
    EXPECT_TRUE(has_ink_at(image, at.crank)) << angle;
    const double bore_edge = 0.8 * 22 * at.pixels_per_mm; // on the crown, beside stop and force arrow
    EXPECT_TRUE(has_ink_at(image, {at.crank.x() - bore_edge, at.crown})) << angle;
    EXPECT_FALSE(has_ink_at(image, {at.crank.x() - bore_edge, (at.crown + at.crown_top) / 2 + 3})) << angle;
  }
}

TEST(CrankPicture, SaysAngleTravelAndForce) {
  const QString words = crank_picture(held("60 deg"), k_metric)->in_words;
  EXPECT_TRUE(words.contains(QStringLiteral("60° before top dead centre"))) << words.toStdString();
  EXPECT_TRUE(words.contains(QStringLiteral("13.1 mm below"))) << words.toStdString(); // by hand, above
  EXPECT_TRUE(words.contains(QStringLiteral("anticlockwise, looking at the clutch"))) << words.toStdString();
  // Lever 22 × sin(60° + 12.5039°)/cos 12.5039° = 21.4921 mm: 42 N·m on it are 1.954 kN.
  EXPECT_TRUE(words.contains(QStringLiteral("1.95 kN"))) << words.toStdString();
}

TEST(CrankPicture, MovesWithTheAngle) {
  EXPECT_NE(painted(*crank_picture(held("15 deg"), k_metric)), painted(*crank_picture(held("16 deg"), k_metric)));
}

TEST(CrankPicture, IsNoneWithoutAStop) {
  static const specdb::Catalogue catalogue;
  specdb::HoldQuestion question;
  question.by = "strap";
  question.torque = "42 N.m";
  question.strap_radius = "60 mm";
  const auto answer = specdb::answer_hold(catalogue, question).value().answer;
  EXPECT_FALSE(crank_picture(answer, k_metric));
  EXPECT_FALSE(hold_curve(answer, k_metric));
}

// By virtual work: the force is the torque over the slope of the travel x(t) = r(1 - cos t) + l - √(l² - r² sin² t),
// taken here as a difference.
TEST(HoldCurve, IsTheForceOfVirtualWork) {
  const auto curve = hold_curve(held("15 deg"), k_metric);
  ASSERT_TRUE(curve);
  ASSERT_EQ(curve->bands.size(), 2U);
  const auto travel = [](double t) {
    const double s = 22 * std::sin(t);
    return 22 * (1 - std::cos(t)) + 88 - std::sqrt(88.0 * 88.0 - s * s);
  };
  const auto force_kN = [&](double degrees, double torque_N_m) {
    constexpr double k_h = 1e-5;
    const double t = degrees * k_degree;
    return torque_N_m / ((travel(t + k_h) - travel(t - k_h)) / (2 * k_h)); // N·m over mm: kN
  };
  for (std::size_t i = 0; i < 2; ++i)
    for (const CurvePoint& point : curve->bands[i].points) {
      EXPECT_NEAR(point.likely, force_kN(point.x, i == 0 ? 42 : 60), 1e-4 * point.likely) << point.x;
      EXPECT_EQ(point.low, point.high);
    }
}

TEST(HoldCurve, MarksTheAngleAndTheLimit) {
  const auto curve = hold_curve(held("15 deg"), k_metric);
  ASSERT_TRUE(curve && curve->chosen_x);
  EXPECT_NEAR(*curve->chosen_x, 15, 1e-9);
  EXPECT_EQ(curve->chosen_name, QStringLiteral("15°"));
  const auto& points = curve->bands.front().points;
  EXPECT_TRUE(std::ranges::any_of(points, [](const CurvePoint& point) { return std::abs(point.x - 15) < 1e-9; }));
  EXPECT_TRUE(std::ranges::is_sorted(points, std::ranges::less_equal(), &CurvePoint::x));
  // 9 kN along a stop that leans by 10° are 9 × cos 10° = 8.863 kN along the bore.
  ASSERT_EQ(curve->levels.size(), 1U);
  EXPECT_NEAR(curve->levels.front().y, 8.8633, 1e-3);
}

TEST(HoldCurve, StaysReadable) {
  for (const char* angle : {"2 deg", "15 deg", "90 deg", "160 deg"}) {
    const auto curve = hold_curve(held(angle), k_metric);
    ASSERT_TRUE(curve);
    EXPECT_LE(curve->x_from, *curve->chosen_x) << angle;
    EXPECT_GE(curve->bands.front().points.back().x, *curve->chosen_x) << angle;
  }
  // An ordinary angle: no more than about six times the least force.
  const auto curve = hold_curve(held("49 deg"), k_metric);
  const auto& points = curve->bands.front().points;
  const auto [least, most] = std::ranges::minmax(points, {}, &CurvePoint::likely);
  EXPECT_LT(most.likely / least.likely, 6.5);
}

TEST(AdaptorPicture, StandsToScaleAtItsAngle) {
  for (const double degrees : {0.0, 30.0, 90.0, 135.0}) {
    const AdaptorLayout at = adaptor_layout(
        {quantity::millimetres(300), tightening::Adaptor{quantity::millimetres(120), quantity::degrees(degrees)}});
    const QPointF adaptor = at.fastener - at.drive;
    EXPECT_NEAR(std::hypot(adaptor.x(), adaptor.y()) / (at.drive.x() - at.grip.x()), 120.0 / 300, 1e-9) << degrees;
    EXPECT_NEAR(std::atan2(-adaptor.y(), adaptor.x()) / k_degree, degrees, 1e-9);
  }
}

// 45 N·m through 60 mm straight ahead of an arm of 300 mm: 45 × 300/360 = 37.5 N·m, set at a mark of 1 N·m.
TEST(AdaptorPicture, SaysWhatIsSet) {
  const QString words = adaptor_picture(set("60 mm", "0 deg"), k_metric)->in_words;
  EXPECT_TRUE(words.contains(QStringLiteral("arm 300 mm"))) << words.toStdString();
  EXPECT_TRUE(words.contains(QStringLiteral("adaptor 60 mm"))) << words.toStdString();
  EXPECT_TRUE(words.contains(QStringLiteral("set 37 N·m"))) << words.toStdString(); // of two equally near the lower
  EXPECT_TRUE(words.contains(QStringLiteral("44.4 N·m"))) << words.toStdString();   // 37 × 360/300
}

// A load drags a part backwards against the shaft that drives it: a clockwise shaft pushes it anticlockwise, and that
// tightens a left-hand thread (Michigan Administrative Code R 408.10115 has the same for a wheel nut on its spindle).
TEST(HandPicture, SaysWhichHandIsTightened) {
  const QString words = hand_picture(hand("clockwise")).in_words;
  EXPECT_TRUE(words.contains(QStringLiteral("shaft turns clockwise"))) << words.toStdString();
  EXPECT_TRUE(words.contains(QStringLiteral("pushed anticlockwise"))) << words.toStdString();
  EXPECT_TRUE(words.contains(QStringLiteral("tightens a left-hand thread"))) << words.toStdString();
}

TEST(HandPicture, ShowsTheOtherHandOnRecord) {
  const Drawing agrees = hand_picture(hand("clockwise", thread::Hand::left));
  const Drawing differs = hand_picture(hand("clockwise", thread::Hand::right));
  EXPECT_FALSE(agrees.in_words.contains(QStringLiteral("on record")));
  EXPECT_TRUE(differs.in_words.contains(QStringLiteral("The thread on record is right-hand and would be undone.")));
  EXPECT_NE(painted(agrees), painted(differs));
}

} // namespace

} // namespace clampwright::desk
