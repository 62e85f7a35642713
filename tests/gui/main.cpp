// SPDX-License-Identifier: GPL-3.0-or-later
//
// The tests of the desk run without a screen, each in a process of its own.
#include <QApplication>
#include <QTemporaryDir>
#include <gtest/gtest.h>

int main(int argc, char** argv) {
  testing::InitGoogleTest(&argc, argv);
  // Before the application object: listing the tests makes one as well.
  if (qEnvironmentVariableIsEmpty("CLAMPWRIGHT_TESTS_ON_SCREEN")) qputenv("QT_QPA_PLATFORM", "offscreen");
  const QTemporaryDir runtime; // for its owner alone, as Qt wants it
  qputenv("XDG_RUNTIME_DIR", runtime.path().toUtf8());
  QApplication application(argc, argv);
  return RUN_ALL_TESTS();
}
