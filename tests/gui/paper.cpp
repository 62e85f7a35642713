// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/gui/paper.hpp"

#include <QDir>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <gtest/gtest.h>

namespace clampwright::desk {

QString asked_about(const QString& program, const QStringList& options, const QString& file) {
  QProcess process;
  process.start(program,
                options + QStringList{file} +
                    (program == QStringLiteral("pdftotext") ? QStringList{QStringLiteral("-")} : QStringList{}));
  EXPECT_TRUE(process.waitForFinished()) << program.toStdString() << " (Debian: poppler-utils)";
  EXPECT_EQ(process.exitCode(), 0) << process.readAllStandardError().toStdString();
  return QString::fromUtf8(process.readAllStandardOutput());
}

QString squeezed(const QString& text) {
  static const QRegularExpression space(QStringLiteral("\\s"));
  QString out = text;
  return out.remove(space);
}

QString text_of(const QString& file) {
  return squeezed(asked_about(QStringLiteral("pdftotext"),
                              {QStringLiteral("-raw"), QStringLiteral("-enc"), QStringLiteral("UTF-8")}, file));
}

int pages_of(const QString& file) {
  static const QRegularExpression pages(QStringLiteral("Pages:\\s+(\\d+)"));
  return pages.match(asked_about(QStringLiteral("pdfinfo"), {}, file)).captured(1).toInt();
}

std::vector<QImage> pictures_of(const QString& file, int pixels_per_inch) {
  const QTemporaryDir folder;
  QProcess process;
  process.start(QStringLiteral("pdftoppm"),
                {QStringLiteral("-gray"), QStringLiteral("-r"), QString::number(pixels_per_inch), file,
                 folder.filePath(QStringLiteral("page"))});
  EXPECT_TRUE(process.waitForFinished());
  std::vector<QImage> pages;
  for (const QString& name : QDir(folder.path()).entryList({QStringLiteral("page*")}, QDir::Files, QDir::Name))
    pages.emplace_back(folder.filePath(name));
  return pages;
}

} // namespace clampwright::desk
