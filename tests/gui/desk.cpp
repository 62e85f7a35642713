// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/gui/desk.hpp"

#include "gui/look/utf8.hpp"
#include "gui/records/record_form.hpp"
#include "specdb/demo/demo_workshop.hpp"

namespace clampwright::desk {

std::vector<Target> all_targets() {
  std::vector<Target> targets;
  for (const FoundLine& line : page_lines())
    targets.push_back(line.target);
  targets.push_back({Target::To::joint, "pump/clutch-hub"});
  targets.push_back({Target::To::joint, "pump/head-nuts"});
  targets.push_back({Target::To::machine, "pump"});
  targets.push_back({Target::To::table, "strength-classes", {{k_table_words, "8.8"}}});
  for (const RecordForm& form : record_forms())
    targets.push_back({Target::To::record, form.id, {{k_record_of, "pump"}}});
  targets.push_back({Target::To::record, "joint", {{k_record_key, "pump/clutch-hub"}}});
  return targets;
}

Desk::Desk() {
  // Whatever the system speaks: tests that want another language say so.
  memory->keep(Kept::language, QStringLiteral("en"));
  bench = std::make_unique<Bench>(*memory, [] { return k_today; });
  opener = std::make_unique<WorkshopOpener>(*bench);
  put_on(*qApp, bench->look());
}

Desk::~Desk() = default;

MainWindow& Desk::window() {
  if (!window_) {
    window_ = std::make_unique<MainWindow>(*bench, *opener, asking);
    window_->show();
    window_->activateWindow();
    settle();
  }
  return *window_;
}

std::filesystem::path Desk::file(const char* name) const { return to_utf8(folder.filePath(QLatin1String(name))); }

void Desk::open_demo() {
  const auto path = file("demo.clampwright");
  ASSERT_TRUE(specdb::make_demo_workshop(path, k_today));
  auto workshop = specdb::Workshop::open(path);
  ASSERT_TRUE(workshop);
  bench->show_workshop(std::make_shared<const specdb::Workshop>(std::move(*workshop)), path);
}

void Desk::settle() {
  for (int i = 0; i < 3; ++i) {
    QApplication::sendPostedEvents();
    QApplication::processEvents();
  }
}

} // namespace clampwright::desk
