// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/widgets/find_panel.hpp"

#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QPainter>
#include <QStyledItemDelegate>
#include <QVBoxLayout>

#include "gui/models/find_list.hpp"

namespace clampwright::desk {

namespace {

// Name above, kind and place below it.
class LinePainter : public QStyledItemDelegate {
 public:
  LinePainter(const Bench& bench, QObject* parent) : QStyledItemDelegate(parent), bench_(bench) {}

  [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex&) const override {
    const Look& look = bench_.look();
    const int lines = QFontMetrics(title_font()).height() + QFontMetrics(detail_font()).height();
    return {option.rect.width(), std::max(look.target(), lines + look.gap())};
  }

  void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override {
    const Look& look = bench_.look();
    const bool chosen = (option.state & QStyle::State_Selected) != 0;
    const Pair& pair = chosen ? look.colours().chosen : look.colours().page;
    painter->save();
    painter->fillRect(option.rect, pair.ground);
    const QRect inner = option.rect.adjusted(look.gap(), look.gap() / 2, -look.gap(), -look.gap() / 2);
    painter->setPen(pair.ink);
    painter->setFont(title_font());
    const int title = painter->fontMetrics().height();
    painter->drawText(QRect(inner.left(), inner.top(), inner.width(), title), Qt::AlignLeft | Qt::AlignVCenter,
                      painter->fontMetrics().elidedText(index.data().toString(), Qt::ElideRight, inner.width()));
    painter->setFont(detail_font());
    const QString below = index.data(FindList::detail).toString();
    const QString kind = index.data(FindList::kind).toString();
    const QString text = below.isEmpty() ? kind : QStringLiteral("%1: %2").arg(kind, below);
    painter->setPen(chosen ? pair.ink : look.colours().quiet.ink);
    painter->drawText(QRect(inner.left(), inner.top() + title, inner.width(), painter->fontMetrics().height()),
                      Qt::AlignLeft | Qt::AlignVCenter,
                      painter->fontMetrics().elidedText(text, Qt::ElideRight, inner.width()));
    painter->setPen(QPen(look.colours().rule.ink, 1));
    painter->drawLine(option.rect.bottomLeft(), option.rect.bottomRight());
    painter->restore();
  }

 private:
  [[nodiscard]] QFont title_font() const {
    QFont font = text_font(bench_.look());
    font.setBold(true);
    return font;
  }
  [[nodiscard]] QFont detail_font() const {
    QFont font = text_font(bench_.look());
    font.setPixelSize(bench_.look().small());
    return font;
  }
  const Bench& bench_;
};

} // namespace

FindPanel::FindPanel(Bench& bench, QLineEdit& line, QWidget* parent)
    : QWidget(parent),
      bench_(bench),
      line_(line),
      finder_(bench.catalogue()),
      note_(new QLabel(this)),
      list_(new QListView(this)),
      lines_(new FindList(this)) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  note_->setWordWrap(true);
  note_->setMargin(bench.look().gap());
  column->addWidget(note_);
  column->addWidget(list_, 1);
  list_->setModel(lines_);
  list_->setItemDelegate(new LinePainter(bench, list_));
  list_->setAccessibleName(tr("found"));
  list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  list_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
  list_->installEventFilter(this);
  line_.installEventFilter(this);
  connect(list_, &QListView::clicked, this, &FindPanel::open_index);
  connect(&line_, &QLineEdit::textChanged, this, [this] {
    machine_.clear();
    find();
  });
  const auto take_up = [this] {
    finder_.take_up(bench_.workshop());
    find();
  };
  connect(&bench, &Bench::workshop_changed, this, take_up);
  connect(&bench, &Bench::look_changed, this, [this] { list_->doItemsLayout(); });
  take_up();
}

QString FindPanel::note() const { return note_->isHidden() ? QString() : note_->text(); }

void FindPanel::find() {
  if (!finder_.has_workshop()) machine_.clear();
  FoundLines found = machine_.empty() ? finder_.find(line_.text()) : finder_.joints_of(machine_);
  note_->setText(found.note);
  note_->setVisible(!found.note.isEmpty());
  lines_->show(std::move(found.lines));
  if (!line_.text().isEmpty()) list_->setCurrentIndex(lines_->index(0));
}

void FindPanel::open_chosen() {
  const QModelIndex chosen = list_->currentIndex();
  open_index(chosen.isValid() ? chosen : lines_->index(0));
}

void FindPanel::open_index(const QModelIndex& index) {
  const FoundLine* line = lines_->line(index);
  if (line == nullptr) return;
  const Target target = line->target;
  if (target.to == Target::To::machine || target.to == Target::To::all_machines) {
    machine_ = target.to == Target::To::machine ? target.key : std::string();
    find();
    list_->setCurrentIndex(lines_->index(0));
  }
  if (target.to != Target::To::all_machines) emit opened(target);
}

bool FindPanel::key_in_line(int key) {
  const int rows = lines_->rowCount();
  const int row = list_->currentIndex().row();
  switch (key) {
  case Qt::Key_Down:
    list_->setCurrentIndex(lines_->index(std::min(row + 1, rows - 1)));
    return true;
  case Qt::Key_Up:
    list_->setCurrentIndex(lines_->index(std::max(row - 1, 0)));
    return true;
  case Qt::Key_Return:
  case Qt::Key_Enter:
    open_chosen();
    return true;
  default:
    return false;
  }
}

bool FindPanel::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() != QEvent::KeyPress) return QWidget::eventFilter(watched, event);
  const int key = static_cast<QKeyEvent*>(event)->key();
  if (watched == &line_) return key_in_line(key);
  if (key == Qt::Key_Return || key == Qt::Key_Enter) {
    open_chosen();
    return true;
  }
  return QWidget::eventFilter(watched, event);
}

} // namespace clampwright::desk
