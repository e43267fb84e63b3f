#include "findings/remedy_button.h"

#include <QKeyEvent>
#include <QStyleOptionButton>
#include <QStylePainter>

#include "controls/text_scale.h"
#include "document/wording.h"
#include "row/ink.h"

namespace tenter::desktop::findings {

namespace {

constexpr int inset = 8;  // px
constexpr int verticalInset = 5;
constexpr int leastWidth = 120;
constexpr int usualWidth = 280;
constexpr int wrapping = Qt::TextWordWrap | Qt::AlignLeft | Qt::AlignTop;

int heightOf(const QFont& font, const QString& text, int width) {
    constexpr int tall = 10000;
    return QFontMetrics(font).boundingRect(QRect(0, 0, width, tall), wrapping, text).height();
}

}  // namespace

RemedyButton::RemedyButton(const QString& title, const QString& effect, const QString& details,
                           QWidget* parent)
    : QPushButton(parent), title_(title), effect_(effect) {
    setAccessibleName(title);
    setAccessibleDescription(effect);
    if (!details.isEmpty()) setToolTip(toolTipText(details));
    QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

QFont RemedyButton::effectFont() const {
    return controls::smallFont(font());
}

int RemedyButton::heightForWidth(int width) const {
    const int room = width - 2 * inset;
    return heightOf(font(), title_, room) + heightOf(effectFont(), effect_, room) + 2 * verticalInset;
}

QSize RemedyButton::sizeHint() const {
    return {usualWidth, heightForWidth(usualWidth)};
}

QSize RemedyButton::minimumSizeHint() const {
    return {leastWidth, heightForWidth(std::max(leastWidth, width()))};
}

// As in dialogs. Otherwise Enter would reach the list of findings, which opens the finding again.
void RemedyButton::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter)
        click();
    else
        QPushButton::keyPressEvent(event);
}

void RemedyButton::paintEvent(QPaintEvent*) {
    QStylePainter painter(this);
    QStyleOptionButton option;
    initStyleOption(&option);
    painter.drawPrimitive(QStyle::PE_PanelButtonCommand, option);
    const row::Ink ink = row::Ink::of(palette());
    const int room = width() - 2 * inset;
    const int titleHeight = heightOf(font(), title_, room);
    painter.setPen(isEnabled() ? ink.text : ink.quiet);
    painter.drawText(QRect(inset, verticalInset, room, titleHeight), wrapping, title_);
    painter.setFont(effectFont());
    painter.setPen(ink.quiet);
    painter.drawText(QRect(inset, verticalInset + titleHeight, room, height() - verticalInset - titleHeight),
                     wrapping, effect_);
}

}  // namespace tenter::desktop::findings
