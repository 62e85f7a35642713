// SPDX-License-Identifier: GPL-3.0-or-later
//
// Every question that a window of its own puts to the person goes through here, so that a test can answer.
#pragma once

#include <functional>
#include <optional>

#include <QString>

class QPageLayout;
class QPrinter;
class QWidget;

namespace clampwright::desk {

class Asking {
 public:
  virtual ~Asking() = default;
  using Answer = std::function<void(std::optional<QString>)>;
  // The answer comes later, by a call; nothing means that the person let it be.
  virtual void file_to_open(QWidget& parent, const QString& title, const QString& filter, Answer answer) = 0;
  virtual void file_to_save(QWidget& parent, const QString& title, const QString& name, const QString& filter,
                            Answer answer) = 0;
  // The printer to print on, set to that sheet until the person chooses another; nullptr if the person let it be. It
  // lives only during the call.
  virtual void printer(QWidget& parent, const QPageLayout& sheet, std::function<void(QPrinter*)> answer) = 0;
  // Tells something that must be read.
  virtual void tell(QWidget& parent, const QString& title, const QString& text) = 0;
  // Yes or no; the words of the button that says yes.
  virtual void confirm(QWidget& parent, const QString& text, const QString& yes, std::function<void(bool)> answer) = 0;
};

// Windows of the desk's own toolkit. Lives as long as the program.
[[nodiscard]] Asking& asking_in_windows();

} // namespace clampwright::desk
