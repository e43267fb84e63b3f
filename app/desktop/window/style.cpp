#include "window/style.h"

#include <QPainter>
#include <QPainterPath>
#include <QStyleOption>
#include <QToolButton>

#include "controls/expander.h"
#include "controls/glyphs.h"
#include "controls/text_scale.h"
#include "window/setting_list.h"

namespace tenter::desktop::window {

namespace {

constexpr int controlHeight = 28;
constexpr int tableMargin = 8;  // beside the text of a cell
constexpr int menuInset = 4;    // of the lines between entries

void drawBox(QPainter* painter, const QRect& rect, const QColor& fill, const QColor& edge,
             double weight = 1) {
    painter->save();
    const double inset = weight / 2;
    painter->setPen(edge.alpha() == 0 ? QPen(Qt::NoPen)
                                      : QPen(edge, weight, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
    painter->setBrush(fill);
    painter->drawRect(QRectF(rect).adjusted(inset, inset, -inset, -inset));
    painter->restore();
}

void drawField(QPainter* painter, const QStyleOption* option) {
    const bool focus = option->state.testFlag(QStyle::State_HasFocus);
    const bool enabled = option->state.testFlag(QStyle::State_Enabled);
    const QPalette& palette = option->palette;
    drawBox(painter, option->rect, palette.color(enabled ? QPalette::Base : QPalette::Window),
            palette.color(focus     ? QPalette::Highlight
                          : enabled ? QPalette::Mid
                                    : QPalette::Midlight),
            focus ? 2 : 1);
}

/// `shownOn`: false for a button that shows in another way that it is checked.
void drawButton(QPainter* painter, const QStyleOption* option, bool flat, bool shownOn = true) {
    const QStyle::State state = option->state;
    const QPalette& palette = option->palette;
    const bool down = state.testFlag(QStyle::State_Sunken) || (shownOn && state.testFlag(QStyle::State_On));
    const bool over = state.testFlag(QStyle::State_MouseOver) && state.testFlag(QStyle::State_Enabled);
    QColor fill = flat ? QColor(Qt::transparent) : palette.color(QPalette::Base);
    if (over) fill = palette.color(QPalette::Button);
    if (down) fill = palette.color(QPalette::Midlight);
    QColor edge =
        flat ? QColor(Qt::transparent)
             : palette.color(state.testFlag(QStyle::State_Enabled) ? QPalette::Mid : QPalette::Midlight);
    double weight = 1;
    if (state.testFlag(QStyle::State_HasFocus)) {
        edge = palette.color(QPalette::Highlight);
        weight = 2;
    }
    drawBox(painter, option->rect, fill, edge, weight);
}

void drawCheckBox(QPainter* painter, const QStyleOption* option) {
    const bool on = option->state.testFlag(QStyle::State_On);
    const bool enabled = option->state.testFlag(QStyle::State_Enabled);
    const QPalette& palette = option->palette;
    const QColor ink = palette.color(enabled ? QPalette::WindowText : QPalette::Mid);
    drawBox(painter, option->rect, on ? ink : palette.color(QPalette::Base),
            on ? ink : palette.color(QPalette::Mid));
    if (!on) return;
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    painter->setPen(QPen(palette.color(QPalette::Window), 2));
    const QRectF r(option->rect);
    QPainterPath tick;
    tick.moveTo(r.left() + r.width() * 0.22, r.top() + r.height() * 0.52);
    tick.lineTo(r.left() + r.width() * 0.42, r.top() + r.height() * 0.72);
    tick.lineTo(r.left() + r.width() * 0.78, r.top() + r.height() * 0.28);
    painter->drawPath(tick);
    painter->restore();
}

void drawRadioButton(QPainter* painter, const QStyleOption* option) {
    const bool on = option->state.testFlag(QStyle::State_On);
    const bool enabled = option->state.testFlag(QStyle::State_Enabled);
    const QPalette& palette = option->palette;
    const QColor ink = palette.color(enabled ? QPalette::WindowText : QPalette::Mid);
    const QRectF ring = QRectF(option->rect).adjusted(1.5, 1.5, -1.5, -1.5);
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    painter->setPen(QPen(on ? ink : palette.color(QPalette::Mid), on ? 1.5 : 1));
    painter->setBrush(palette.color(QPalette::Base));
    painter->drawEllipse(ring);
    if (on) {
        painter->setPen(Qt::NoPen);
        painter->setBrush(ink);
        const double inset = ring.width() * 0.26;
        painter->drawEllipse(ring.adjusted(inset, inset, -inset, -inset));
    }
    painter->restore();
}

void drawSign(QPainter* painter, const QRect& rect, controls::Glyph sign, const QColor& colour) {
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    painter->translate(rect.center().x() - 7.5, rect.center().y() - 7.5);
    painter->setPen(QPen(colour, 1.4));
    painter->setBrush(Qt::NoBrush);
    painter->drawPath(controls::glyphPath(sign));
    painter->restore();
}

/// The sign beside an item of a tree that can be opened, in the colour of the item's text.
void drawBranch(QPainter* painter, const QStyleOption* option) {
    const QStyle::State state = option->state;
    if (!state.testFlag(QStyle::State_Children)) return;
    const controls::Glyph closed =
        option->direction == Qt::RightToLeft ? controls::Glyph::Left : controls::Glyph::Right;
    const auto ink = state.testFlag(QStyle::State_Selected) ? QPalette::HighlightedText : QPalette::Text;
    drawSign(painter, option->rect, state.testFlag(QStyle::State_Open) ? controls::Glyph::Down : closed,
             option->palette.color(ink));
}

void drawMenuTitle(const QStyle& style, QPainter* painter, const QStyleOptionMenuItem& item) {
    const bool open = item.state.testFlag(QStyle::State_Sunken);
    const bool over = item.state.testFlag(QStyle::State_Selected);
    if (open || over)
        painter->fillRect(item.rect, item.palette.color(open ? QPalette::Highlight : QPalette::Button));
    const int mnemonic = style.styleHint(QStyle::SH_UnderlineShortcut, &item) != 0 ? Qt::TextShowMnemonic
                                                                                   : Qt::TextHideMnemonic;
    style.drawItemText(painter, item.rect, Qt::AlignCenter | mnemonic, item.palette,
                       item.state.testFlag(QStyle::State_Enabled), item.text,
                       open ? QPalette::HighlightedText : QPalette::WindowText);
}

void drawScrollBar(QPainter* painter, const QStyleOptionSlider* option, const QRect& slider) {
    const QPalette& palette = option->palette;
    painter->fillRect(option->rect, palette.color(QPalette::Window));
    if (option->maximum <= option->minimum) return;
    const bool over =
        option->state.testFlag(QStyle::State_MouseOver) || option->state.testFlag(QStyle::State_Sunken);
    const bool across = option->orientation == Qt::Horizontal;
    const QRect bar = across ? slider.adjusted(1, 4, -1, -2) : slider.adjusted(4, 1, -2, -1);
    painter->fillRect(bar, palette.color(over ? QPalette::Dark : QPalette::Mid));
}

}  // namespace

Style::Style() : QProxyStyle("Fusion") {}

void Style::drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                          const QWidget* widget) const {
    switch (element) {
        case PE_PanelLineEdit:
            // The combo box draws the box of a line edit inside it.
            if (const auto* frame = qstyleoption_cast<const QStyleOptionFrame*>(option);
                frame && frame->lineWidth > 0)
                drawField(painter, option);
            return;
        case PE_FrameLineEdit:
            return;
        case PE_Frame:
            if (widget && (widget->inherits("QTextEdit") || widget->inherits("QPlainTextEdit") ||
                           widget->inherits("QListWidget") || widget->inherits("QUndoView") ||
                           widget->inherits("QTreeView"))) {
                drawField(painter, option);
                return;
            }
            // Pop-up lists of choices and of search results have the same border as fields.
            if (widget && (widget->windowType() == Qt::Popup || qobject_cast<const SettingList*>(widget))) {
                drawBox(painter, option->rect, Qt::transparent, option->palette.color(QPalette::Mid));
                return;
            }
            break;
        case PE_PanelButtonCommand:
            drawButton(painter, option, false);
            return;
        case PE_PanelButtonTool:
            drawButton(painter, option, true, widget == nullptr || !controls::isExpander(*widget));
            return;
        case PE_IndicatorCheckBox:
            drawCheckBox(painter, option);
            return;
        case PE_IndicatorRadioButton:
            drawRadioButton(painter, option);
            return;
        case PE_FrameFocusRect:
            if (widget && widget->inherits("QAbstractItemView")) return;
            // A flat tool button draws its box, and so its ring, only under the pointer.
            if (const auto* tool = qobject_cast<const QToolButton*>(widget); tool && tool->autoRaise()) {
                drawBox(painter, tool->rect(), Qt::transparent, option->palette.color(QPalette::Highlight),
                        2);
                return;
            }
            // Buttons and fields draw the focus ring together with their box.
            if (widget && (widget->inherits("QPushButton") || widget->inherits("QToolButton") ||
                           widget->inherits("QComboBox") || widget->inherits("QLineEdit")))
                return;
            drawBox(painter, option->rect, Qt::transparent, option->palette.color(QPalette::Highlight), 2);
            return;
        case PE_IndicatorBranch:
            drawBranch(painter, option);
            return;
        case PE_PanelMenu:
            drawBox(painter, option->rect, option->palette.color(QPalette::Base),
                    option->palette.color(QPalette::Mid));
            return;
        case PE_FrameMenu:
            return;
        case PE_PanelScrollAreaCorner:
            painter->fillRect(option->rect, option->palette.color(QPalette::Window));
            return;
        case PE_PanelStatusBar:
        case PE_FrameStatusBarItem:
            return;
        default:
            break;
    }
    QProxyStyle::drawPrimitive(element, option, painter, widget);
}

void Style::drawControl(ControlElement element, const QStyleOption* option, QPainter* painter,
                        const QWidget* widget) const {
    if (element == CE_Splitter) {
        // A hairline. The splitter is wider, so that it can be dragged.
        const bool upright = option->rect.width() < option->rect.height();
        const QColor line = option->palette.color(
            option->state.testFlag(State_MouseOver) ? QPalette::Highlight : QPalette::Midlight);
        const QPoint centre = option->rect.center();
        if (upright)
            painter->fillRect(QRect(centre.x(), option->rect.top(), 1, option->rect.height()), line);
        else
            painter->fillRect(QRect(option->rect.left(), centre.y(), option->rect.width(), 1), line);
        return;
    }
    if (const auto* item = qstyleoption_cast<const QStyleOptionMenuItem*>(option);
        item != nullptr && element == CE_MenuItem && item->menuItemType == QStyleOptionMenuItem::Separator &&
        item->text.isEmpty()) {
        const QRect line(item->rect.left() + menuInset, item->rect.center().y(),
                         item->rect.width() - 2 * menuInset, 1);
        painter->fillRect(line, item->palette.color(QPalette::Midlight));
        return;
    }
    // The menus stand beside other controls, so nothing underlines them.
    if (element == CE_MenuBarEmptyArea) return;
    if (const auto* item = qstyleoption_cast<const QStyleOptionMenuItem*>(option);
        item != nullptr && element == CE_MenuBarItem) {
        drawMenuTitle(*this, painter, *item);
        return;
    }
    if (element == CE_ProgressBar) {
        const auto* bar = qstyleoption_cast<const QStyleOptionProgressBar*>(option);
        if (!bar) return;
        painter->fillRect(bar->rect, bar->palette.color(QPalette::Midlight));
        if (bar->maximum <= bar->minimum) return;
        QRect done = bar->rect;
        done.setWidth(static_cast<int>(static_cast<qint64>(done.width()) * (bar->progress - bar->minimum) /
                                       (bar->maximum - bar->minimum)));
        painter->fillRect(done, bar->palette.color(QPalette::Highlight));
        return;
    }
    if (element == CE_ComboBoxLabel) {
        const auto* combo = qstyleoption_cast<const QStyleOptionComboBox*>(option);
        if (combo && !combo->editable) {
            const QRect box = subControlRect(CC_ComboBox, combo, SC_ComboBoxEditField, widget);
            painter->setPen(option->palette.color(
                option->state.testFlag(State_Enabled) ? QPalette::Active : QPalette::Disabled,
                QPalette::Text));
            painter->drawText(
                box, Qt::AlignLeft | Qt::AlignVCenter,
                option->fontMetrics.elidedText(combo->currentText, Qt::ElideRight, box.width()));
            return;
        }
    }
    QProxyStyle::drawControl(element, option, painter, widget);
}

void Style::drawComplexControl(ComplexControl control, const QStyleOptionComplex* option, QPainter* painter,
                               const QWidget* widget) const {
    if (control == CC_ComboBox) {
        drawField(painter, option);
        drawSign(painter, subControlRect(control, option, SC_ComboBoxArrow, widget), controls::Glyph::Down,
                 option->palette.color(QPalette::ButtonText));
        return;
    }
    if (control == CC_ScrollBar) {
        if (const auto* slider = qstyleoption_cast<const QStyleOptionSlider*>(option))
            drawScrollBar(painter, slider, subControlRect(control, option, SC_ScrollBarSlider, widget));
        return;
    }
    QProxyStyle::drawComplexControl(control, option, painter, widget);
}

QSize Style::sizeFromContents(ContentsType type, const QStyleOption* option, const QSize& size,
                              const QWidget* widget) const {
    QSize result = QProxyStyle::sizeFromContents(type, option, size, widget);
    if (type == CT_PushButton)
        result = {std::max(result.width(), size.width() + 24), controls::scaled(controlHeight)};
    if (type == CT_ComboBox || type == CT_LineEdit) result.setHeight(controls::scaled(controlHeight));
    if (type == CT_CheckBox || type == CT_RadioButton)
        result.setHeight(std::max(result.height(), controls::scaled(controlHeight)));
    if (type == CT_MenuItem) {
        const auto* item = qstyleoption_cast<const QStyleOptionMenuItem*>(option);
        if (item && item->menuItemType != QStyleOptionMenuItem::Separator)
            result.setHeight(std::max(result.height(), controls::scaled(controlHeight)));
    }
    if (type == CT_ItemViewItem) result.setHeight(std::max(result.height(), controls::scaled(26)));
    if (type == CT_MenuBarItem) result = {size.width() + 18, controls::scaled(32)};
    return result;
}

QRect Style::subControlRect(ComplexControl control, const QStyleOptionComplex* option, SubControl part,
                            const QWidget* widget) const {
    const QRect box = option->rect;
    if (control == CC_ComboBox && part == SC_ComboBoxArrow)
        return visualRect(option->direction, box, QRect(box.right() - 24, box.top(), 24, box.height()));
    if (control == CC_ComboBox && part == SC_ComboBoxEditField)
        return visualRect(option->direction, box, box.adjusted(8, 2, -26, -2));
    if (control == CC_ScrollBar) {
        const auto* slider = qstyleoption_cast<const QStyleOptionSlider*>(option);
        if (!slider) return {};
        // There are no arrows: the groove is the whole bar.
        const bool across = slider->orientation == Qt::Horizontal;
        const int room = across ? box.width() : box.height();
        const int range = slider->maximum - slider->minimum;
        int length = room;
        if (range > 0)
            length = std::max(24, static_cast<int>(static_cast<qint64>(room) * slider->pageStep /
                                                   (range + slider->pageStep)));
        const int start = sliderPositionFromValue(slider->minimum, slider->maximum, slider->sliderPosition,
                                                  room - length, slider->upsideDown);
        const auto at = [&](int from, int to) {
            return across ? QRect(box.left() + from, box.top(), to - from, box.height())
                          : QRect(box.left(), box.top() + from, box.width(), to - from);
        };
        switch (part) {
            case SC_ScrollBarGroove:
                return box;
            case SC_ScrollBarSlider:
                return at(start, start + length);
            case SC_ScrollBarSubPage:
                return at(0, start);
            case SC_ScrollBarAddPage:
                return at(start + length, room);
            default:
                return {};
        }
    }
    return QProxyStyle::subControlRect(control, option, part, widget);
}

QRect Style::subElementRect(SubElement element, const QStyleOption* option, const QWidget* widget) const {
    if (element == SE_LineEditContents)
        if (const auto* frame = qstyleoption_cast<const QStyleOptionFrame*>(option);
            frame && frame->lineWidth > 0)
            return option->rect.adjusted(5, 1, -5, -1);
    QRect result = QProxyStyle::subElementRect(element, option, widget);
    // A check box can be clicked in its whole height. WCAG 2.2 SC 2.5.8.
    if (element == SE_CheckBoxClickRect || element == SE_RadioButtonClickRect) {
        result.setTop(option->rect.top());
        result.setBottom(option->rect.bottom());
    }
    return result;
}

int Style::pixelMetric(PixelMetric metric, const QStyleOption* option, const QWidget* widget) const {
    switch (metric) {
        // Columns of numbers and words stay apart.
        case PM_HeaderMargin:
            return tableMargin;
        case PM_FocusFrameHMargin:
            if (widget != nullptr && (widget->inherits("QTreeWidget") || widget->inherits("QTableView")))
                return tableMargin - 1;
            return QProxyStyle::pixelMetric(metric, option, widget);
        case PM_ScrollBarExtent:
            return 12;
        case PM_SplitterWidth:
            return 7;
        case PM_ButtonShiftHorizontal:
        case PM_ButtonShiftVertical:
        case PM_MenuBarPanelWidth:
        case PM_MenuBarVMargin:
            return 0;
        case PM_IndicatorWidth:
        case PM_IndicatorHeight:
        case PM_ExclusiveIndicatorWidth:
        case PM_ExclusiveIndicatorHeight:
        case PM_SmallIconSize:
        case PM_ButtonIconSize:
            return 16;
        case PM_MenuBarHMargin:
            return 6;
        default:
            return QProxyStyle::pixelMetric(metric, option, widget);
    }
}

int Style::styleHint(StyleHint hint, const QStyleOption* option, const QWidget* widget,
                     QStyleHintReturn* data) const {
    // Nothing moves by itself, for people whom movement disturbs.
    if (hint == SH_Widget_Animation_Duration) return 0;
    if (hint == SH_ComboBox_Popup) return 0;
    if (hint == SH_EtchDisabledText || hint == SH_DitherDisabledText) return 0;
    if (hint == SH_ScrollBar_Transient || hint == SH_DialogButtonBox_ButtonsHaveIcons) return 0;
    return QProxyStyle::styleHint(hint, option, widget, data);
}

}  // namespace tenter::desktop::window
