// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "gui/pages/page.hpp"
#include "gui/records/record_form.hpp"
#include "gui/sentences/sentence.hpp"
#include "specdb/question/joint_answer.hpp"

class QComboBox;
class QLabel;

namespace clampwright::desk {

class BlankEdit;
class FlowLayout;
class PageView;

// A place that is tightened, as it stands in the open workshop.
class JointPage : public Page {
  Q_OBJECT

 public:
  explicit JointPage(Bench& bench, QWidget* parent = nullptr);

  void show_joint(const std::string& slug);
  [[nodiscard]] const std::string& slug() const { return slug_; }

  [[nodiscard]] QString title() const override;
  [[nodiscard]] std::optional<Printable> printable() const override;
  [[nodiscard]] QString to_copy() const override;
  void take_focus() override;

  [[nodiscard]] PageView& view() const { return *view_; }
  [[nodiscard]] QComboBox& wrench_choice() const { return *wrench_; }
  [[nodiscard]] QComboBox& unit_choice() const { return *unit_; }
  [[nodiscard]] BlankEdit& as_fitted() const { return *fitted_; }

 signals:
  // The joint's own values in a calculator.
  void sentence_wanted(const QString& id, const Words& words);
  // To revise the joint or its figure, or to enter another one.
  void record_wanted(const std::string& form, const RecordKey& key);

 private:
  void make_choices(FlowLayout& row);
  void make_buttons(FlowLayout& row);
  void fill_choices();
  void ask();
  void put_on_look();
  std::string slug_;
  std::optional<specdb::JointAnswer> answer_;
  FlowLayout* flow_ = nullptr;
  FlowLayout* buttons_ = nullptr;
  QComboBox* wrench_ = nullptr;
  QComboBox* unit_ = nullptr;
  BlankEdit* fitted_ = nullptr;
  QLabel* refusal_ = nullptr;
  PageView* view_ = nullptr;
};

} // namespace clampwright::desk
