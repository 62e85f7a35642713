// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/pictures.hpp"

#include <array>

#include <QApplication>
#include <QDir>
#include <QLineEdit>
#include <QPixmap>
#include <QScrollArea>
#include <QTemporaryDir>

#include "gui/look/utf8.hpp"
#include "gui/models/workshop_opener.hpp"
#include "gui/pages/sentence_page.hpp"
#include "gui/printing/print_pages.hpp"
#include "gui/window/main_window.hpp"
#include "gui/window/printing.hpp"
#include "specdb/demo/demo_workshop.hpp"

namespace clampwright::desk {

namespace {

struct PictureLook {
  const char* name;
  Look look;
  const char* language = "en";
};

const std::array k_looks{
    PictureLook{"light", {.theme = Theme::light}},
    PictureLook{"dark", {.theme = Theme::dark}},
    PictureLook{"bench", {.theme = Theme::light, .bench = true}},
    PictureLook{"large", {.theme = Theme::light, .scale = 2}},
    PictureLook{"german", {.theme = Theme::light}, "de"},
};

// With a left-hand thread, with a piston stop on record, with an order of bolts, with figures that stand against each
// other.
constexpr std::array k_joints{"clutch-hub", "flywheel-nut", "head-nuts", "base-nuts"};

class PictureMaker {
 public:
  PictureMaker(QApplication& application, QDir folder, Bench& bench, const PictureLook& look, Imprint imprint)
      : folder_(std::move(folder)),
        name_(QLatin1String(look.name)),
        prints_(&look == &k_looks.front()),
        imprint_(std::move(imprint)),
        opener_(bench),
        window_(bench, opener_, asking_in_windows()) {
    put_on(application, look.look);
    window_.resize(look.look.bench ? QSize(1400, 1000) : QSize(1180, 800));
    window_.show();
  }

  Result<void> all() {
    if (auto done = take("find"); !done) return done;
    window_.find_line().setText(QStringLiteral("clutch"));
    if (auto done = take("found"); !done) return done;
    for (const std::string joint : k_joints) {
      window_.open({Target::To::joint, "pump/" + joint});
      if (auto done = take("joint-" + joint); !done) return done;
      if (auto done = take_whole_page("joint-" + joint + "-whole"); !done) return done;
      if (auto done = print("joint-" + joint, {PaperSize::a4, PaperSize::letter}); !done) return done;
    }
    for (const char* what : {"machines", "wrenches", "documents"}) {
      window_.open({Target::To::records, what});
      if (auto done = take(std::string("records-") + what); !done) return done;
    }
    window_.open({Target::To::record, "joint", {{k_record_key, "pump/clutch-hub"}}});
    if (auto done = take("record-joint"); !done) return done;
    window_.open({Target::To::about});
    if (auto done = take("about"); !done) return done;
    for (const Sentence& sentence : sentences()) {
      window_.open({Target::To::sentence, sentence.id});
      static_cast<SentencePage*>(window_.page())->fill_in_example();
      if (auto done = take("sentence-" + sentence.id); !done) return done;
      if (auto done = print("sentence-" + sentence.id, {PaperSize::a4}); !done) return done;
    }
    return {};
  }

 private:
  Result<void> take(const std::string& page) {
    QApplication::processEvents();
    return save(window_.grab(), page);
  }

  // What one must otherwise scroll to.
  Result<void> take_whole_page(const std::string& page) {
    auto* scroll = window_.page()->findChild<QScrollArea*>();
    if (scroll == nullptr) return {};
    return save(scroll->widget()->grab(), page);
  }

  // On paper all looks are alike.
  Result<void> print(const std::string& page, std::initializer_list<PaperSize> sizes) {
    const auto printable = window_.page()->printable();
    if (!prints_ || !printable) return {};
    for (const PaperSize size : sizes) {
      const QString file =
          folder_.filePath(QStringLiteral("print-%1-%2.pdf").arg(from_utf8(page), paper_name(size).toLower()));
      if (auto done = write_pdf(file, *printable, size, imprint_); !done) return done;
    }
    return {};
  }

  Result<void> save(const QPixmap& picture, const std::string& page) {
    const QString file = folder_.filePath(QStringLiteral("%1-%2.png").arg(name_, from_utf8(page)));
    if (picture.save(file)) return {};
    return refuse(Trouble::cannot_create, "cannot-write", "the picture cannot be written", to_utf8(file),
                  "name a folder that may be written");
  }

  QDir folder_;
  QString name_;
  bool prints_;
  Imprint imprint_;
  WorkshopOpener opener_;
  MainWindow window_;
};

} // namespace

Result<void> make_pictures(QApplication& application, const QString& folder, std::chrono::year_month_day today) {
  if (!QDir().mkpath(folder))
    return refuse(Trouble::cannot_create, "cannot-make-folder", "the folder cannot be made", to_utf8(folder),
                  "name one that may be made");
  const QTemporaryDir place;
  const std::filesystem::path file = to_utf8(place.filePath(QStringLiteral("demo.clampwright")));
  if (auto made = specdb::make_demo_workshop(file, today); !made) return made;
  auto workshop = specdb::Workshop::open(file);
  if (!workshop) return Refusal(workshop.error());
  const auto shared = std::make_shared<const specdb::Workshop>(std::move(*workshop));
  for (const PictureLook& one : k_looks) {
    const auto memory = short_memory();
    Bench bench(*memory, [today] { return today; });
    bench.speak_language(QLatin1String(one.language));
    bench.put_on_look(one.look);
    bench.take_wrench("A");
    bench.show_workshop(shared, file);
    if (auto done = PictureMaker(application, QDir(folder), bench, one, imprint_of(today)).all(); !done) return done;
  }
  return {};
}

} // namespace clampwright::desk
