// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/widgets/asking.hpp"

#include <memory>

#include <QCoreApplication>
#include <QFileDialog>
#include <QFileInfo>
#include <QMessageBox>
#include <QPageLayout>
#include <QPrintDialog>
#include <QPrinter>
#include <QPushButton>

namespace clampwright::desk {

namespace {

// No window waits in a loop of its own: each is shown, and calls back when it is closed.
class AskingInWindows : public Asking {
 public:
  void file_to_open(QWidget& parent, const QString& title, const QString& filter, Answer answer) override {
    auto* dialog = new QFileDialog(&parent, title, QString(), filter);
    dialog->setFileMode(QFileDialog::ExistingFile);
    show(*dialog, std::move(answer));
  }

  void file_to_save(QWidget& parent, const QString& title, const QString& name, const QString& filter,
                    Answer answer) override {
    auto* dialog = new QFileDialog(&parent, title, QString(), filter);
    dialog->setAcceptMode(QFileDialog::AcceptSave);
    dialog->selectFile(name);
    dialog->setDefaultSuffix(QFileInfo(name).suffix());
    show(*dialog, std::move(answer));
  }

  void printer(QWidget& parent, const QPageLayout& sheet, std::function<void(QPrinter*)> answer) override {
    const auto printer = std::make_shared<QPrinter>(QPrinter::HighResolution);
    printer->setPageLayout(sheet);
    auto* dialog = new QPrintDialog(printer.get(), &parent);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    QObject::connect(dialog, &QDialog::finished, dialog, [printer, answer = std::move(answer)](int result) {
      answer(result == QDialog::Accepted ? printer.get() : nullptr);
    });
    dialog->open();
  }

  void tell(QWidget& parent, const QString& title, const QString& text) override {
    auto* box = new QMessageBox(QMessageBox::NoIcon, title, text, QMessageBox::Close, &parent);
    box->setAttribute(Qt::WA_DeleteOnClose);
    box->open();
  }

  void confirm(QWidget& parent, const QString& text, const QString& yes, std::function<void(bool)> answer) override {
    auto* box =
        new QMessageBox(QMessageBox::NoIcon, QCoreApplication::applicationName(), text, QMessageBox::Cancel, &parent);
    box->setAttribute(Qt::WA_DeleteOnClose);
    QPushButton* button = box->addButton(yes, QMessageBox::AcceptRole);
    box->setDefaultButton(QMessageBox::Cancel); // what is confirmed cannot be undone
    QObject::connect(box, &QMessageBox::finished, box,
                     [box, button, answer = std::move(answer)] { answer(box->clickedButton() == button); });
    box->open();
  }

 private:
  static void show(QFileDialog& dialog, Answer answer) {
    dialog.setAttribute(Qt::WA_DeleteOnClose);
    QObject::connect(&dialog, &QFileDialog::finished, &dialog, [&dialog, answer = std::move(answer)](int result) {
      if (result == QDialog::Accepted && !dialog.selectedFiles().isEmpty())
        answer(dialog.selectedFiles().constFirst());
      else
        answer(std::nullopt);
    });
    dialog.open();
  }
};

} // namespace

Asking& asking_in_windows() {
  static AskingInWindows windows;
  return windows;
}

} // namespace clampwright::desk
