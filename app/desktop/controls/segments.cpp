#include "controls/segments.h"

#include <QHBoxLayout>
#include <QHelpEvent>
#include <QPainter>

#include <QStyle>
#include <QToolTip>

#include "controls/inks.h"
#include "controls/text_scale.h"

namespace tenter::desktop::controls {

namespace {

constexpr int sidePadding = 12;
constexpr int elisionRoom = 8;  // px; with less the text is cut

class Segment : public QAbstractButton {
public:
    using QAbstractButton::QAbstractButton;
    bool first = false;  ///< on the left

    [[nodiscard]] QSize sizeHint() const override {
        return {fontMetrics().horizontalAdvance(text()) + 2 * sidePadding, scaled(28)};
    }
    [[nodiscard]] QSize minimumSizeHint() const override {
        // One px more, because the advance is rounded.
        return {fontMetrics().horizontalAdvance(text()) + elisionRoom + 1, scaled(28)};
    }

protected:
    bool event(QEvent* event) override {
        // What is cut is read in the tooltip.
        if (event->type() == QEvent::ToolTip && toolTip().isEmpty() && shownText() != text()) {
            QToolTip::showText(static_cast<QHelpEvent*>(event)->globalPos(), text(), this);
            return true;
        }
        return QAbstractButton::event(event);
    }
    void paintEvent(QPaintEvent*) override {
        QPainter painter(this);
        painter.setRenderHint(QPainter::Antialiasing);
        // Neighbours share one line.
        const QRectF box = QRectF(rect()).adjusted(first ? 0.5 : -0.5, 0.5, -0.5, -0.5);
        QColor fill = palette().color(QPalette::Base);
        QColor ink = palette().color(QPalette::ButtonText);
        if (isChecked()) {
            fill = palette().color(QPalette::WindowText);
            ink = palette().color(QPalette::Window);
        } else if (underMouse() && isEnabled()) {
            fill = palette().color(QPalette::Button);
        }
        if (!isEnabled() && !isChecked()) ink = palette().color(QPalette::Disabled, QPalette::ButtonText);
        painter.setPen(isChecked() ? fill : palette().color(QPalette::Mid));
        painter.setBrush(fill);
        painter.drawRect(box);
        painter.setPen(ink);
        painter.drawText(rect(), Qt::AlignCenter, shownText());
        if (hasFocus() && window()->testAttribute(Qt::WA_KeyboardFocusChange)) {
            painter.setBrush(Qt::NoBrush);
            painter.setPen(QPen(
                isChecked() ? palette().color(QPalette::Window) : palette().color(QPalette::Highlight), 2));
            painter.drawRect(box.adjusted(2.5, 2.5, -2.5, -2.5));
        }
    }

private:
    [[nodiscard]] QString shownText() const {
        return fontMetrics().elidedText(text(), Qt::ElideRight, width() - elisionRoom / 2);
    }
};

}  // namespace

Segments::Segments(QWidget* parent) : QWidget(parent) {
    auto* box = new QHBoxLayout(this);
    box->setContentsMargins(0, 0, 0, 0);
    box->setSpacing(0);
    group_.setExclusive(true);
    connect(&group_, &QButtonGroup::idClicked, this, &Segments::chosen);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
}

void Segments::setTexts(const QStringList& texts, const QStringList& names) {
    if (texts != texts_) {
        const int down = current();
        const auto old = group_.buttons();
        const bool rebuild = old.size() != texts.size();
        if (rebuild) {
            for (QAbstractButton* button : old) {
                group_.removeButton(button);
                layout()->removeWidget(button);
                button->hide();
                button->deleteLater();
            }
        }
        for (int i = 0; i < texts.size(); ++i) {
            if (!rebuild) {
                group_.button(i)->setText(texts[i]);
                continue;
            }
            auto* button = new Segment(this);

            button->setText(texts[i]);
            button->setCheckable(true);
            // The group decides; this makes screen readers call it a radio button.
            button->setAutoExclusive(true);
            button->setFocusPolicy(Qt::StrongFocus);
            button->setSizePolicy(filling_ ? QSizePolicy::Expanding : QSizePolicy::Preferred,
                                  QSizePolicy::Fixed);
            button->installEventFilter(this);
            group_.addButton(button, i);
            static_cast<QHBoxLayout*>(layout())->addWidget(button);
        }
        texts_ = texts;
        markFirst();
        setCurrent(down);
        updateGeometry();
    }
    for (int i = 0; i < texts.size(); ++i) {
        group_.button(i)->setAccessibleName(names.value(i, texts[i]));
        group_.button(i)->setToolTip(names.value(i) == texts[i] ? QString() : names.value(i));
    }
}

// Neighbours share a line, so the segment on the left draws one more.
void Segments::markFirst() {
    const int left = layoutDirection() == Qt::RightToLeft ? static_cast<int>(texts_.size()) - 1 : 0;
    for (QAbstractButton* button : group_.buttons()) {
        static_cast<Segment*>(button)->first = group_.id(button) == left;
        button->update();
    }
}

void Segments::changeEvent(QEvent* event) {
    if (event->type() == QEvent::LayoutDirectionChange) markFirst();
    QWidget::changeEvent(event);
}

void Segments::setCurrent(int index) {
    if (QAbstractButton* button = group_.button(index)) {
        button->setChecked(true);
    } else if (QAbstractButton* down = group_.checkedButton()) {
        group_.setExclusive(false);
        down->setChecked(false);
        group_.setExclusive(true);
    }
}

bool Segments::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::MouseButtonDblClick)
        // After the button has handled the click.
        QMetaObject::invokeMethod(
            this,
            [this, index = group_.id(qobject_cast<QAbstractButton*>(watched))] {
                Q_EMIT doubleClicked(index);
            },
            Qt::QueuedConnection);
    return QWidget::eventFilter(watched, event);
}

void Segments::setFilling(bool on) {
    filling_ = on;
}

}  // namespace tenter::desktop::controls
