// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/text/drawn_object.hpp"

#include <algorithm>
#include <memory>

#include <QAbstractTextDocumentLayout>
#include <QPainter>
#include <QTextCursor>
#include <QTextDocument>
#include <QTextObjectInterface>

namespace clampwright::desk {

namespace {

using Shared = std::shared_ptr<const Drawing>;

constexpr int k_drawing = QTextFormat::UserObject + 1;
constexpr int k_property = QTextFormat::UserProperty + 1;

class DrawnObject : public QObject, public QTextObjectInterface {
  Q_OBJECT
  Q_INTERFACES(QTextObjectInterface)

 public:
  DrawnObject(QObject* parent, const Look& look) : QObject(parent), look_(look) {}

  QSizeF intrinsicSize(QTextDocument* text, int, const QTextFormat& format) override {
    const Shared drawing = format.property(k_property).value<Shared>();
    return drawing->size * scale(*text, *drawing);
  }

  void drawObject(QPainter* painter, const QRectF& place, QTextDocument* text, int,
                  const QTextFormat& format) override {
    const Shared drawing = format.property(k_property).value<Shared>();
    const double factor = scale(*text, *drawing);
    painter->save();
    painter->translate(place.topLeft());
    painter->scale(factor, factor);
    painter->setRenderHint(QPainter::Antialiasing);
    // Small print at 100 %: the painter is scaled already.
    QFont font = text_font(look_);
    font.setPixelSize(Look{.theme = look_.theme}.small());
    painter->setFont(font);
    drawing->paint(*painter, look_.colours());
    painter->restore();
  }

 private:
  [[nodiscard]] double scale(const QTextDocument& text, const Drawing& drawing) const {
    const double wanted = look_.scale * (look_.bench ? 1.4 : 1);
    const double room = text.textWidth() - 2 * text.documentMargin();
    return room > 0 ? std::min(wanted, room / drawing.size.width()) : wanted;
  }
  Look look_;
};

} // namespace

DrawnObjects::DrawnObjects(QTextDocument& text, const Look& look) : look_(look) {
  text.documentLayout()->registerHandler(k_drawing, new DrawnObject(&text, look));
}

void DrawnObjects::put(QTextCursor& cursor, const Drawing& drawing) const {
  QTextCharFormat format;
  format.setObjectType(k_drawing);
  format.setProperty(k_property, QVariant::fromValue(std::make_shared<const Drawing>(drawing)));
  cursor.insertText(QString(QChar::ObjectReplacementCharacter), format);
}

} // namespace clampwright::desk

#include "drawn_object.moc"
