#include "row/figures.h"

#include <QPainter>

#include "controls/glossary.h"
#include "document/wording.h"
#include "row/ink.h"
#include "row/lookup.h"

namespace tenter::desktop::row {

namespace {

constexpr int padding = 8;
constexpr int between = 16;
constexpr int leastNote = 240;  // px, smallest width of a box with a note

QString size(const layout::Box& box) {
    return figure(box.width, 1) + " × " + pixels(box.height, 1);
}

void addText(Figures& figures, const LaidOutRow& row, const layout::LaidPart& part) {
    const double rem = row.rem();
    figures.rows.append(
        {QObject::tr("Font size"),
         QObject::tr("%1 · %2\u00A0rem").arg(pixels(part.fontSize), figure(part.fontSize / rem))});
    figures.rows.append({QObject::tr("Line height"),
                         QObject::tr("%1 · %2\u00A0"
                                     "em")
                             .arg(pixels(part.lineHeight), figure(part.lineHeight / part.fontSize))});
    figures.rows.append(
        {QObject::tr("Measure"), QObject::tr("%1 characters per line").arg(figure(part.measure, 1))});
    figures.rows.append({QObject::tr("Lines"), figure(part.lineCount, 0)});
    if (part.lineCount == 0) return;
    const bool tight = part.slack < text::tightSlack;
    figures.rows.append({QObject::tr("Slack"), (tight ? QObject::tr("%1 of the line width, tight fit")
                                                      : QObject::tr("%1 of the line width"))
                                                   .arg(percent(part.slack, tight ? 2 : 1))});
    if (tight) figures.note = QObject::tr(glossary::tightFit) + '.';
}

/// Adds the line counts of other browsers where they differ, and a note if a browser's lines cannot be
/// computed.
void addEngines(Figures& figures, const LayoutCache& layouts, std::size_t variant, std::size_t index) {
    const layout::LaidPart& part = layouts.of(variant).layout.parts[index];
    for (const text::BreakProfile* profile : text::profiles()) {
        const std::size_t lines = layouts.layout(variant, *profile).parts[index].lineCount;
        if (lines != part.lineCount)
            figures.rows.append(
                {QObject::tr("In %1", "browser").arg(engineTitle(*profile)), linesTitle(lines)});
        if (part.paragraph != nullptr && profile->usesEngineData(part.paragraph->text()))
            figures.note =
                QObject::tr("%1 uses its own dictionary or font for this text, so its lines may differ.")
                    .arg(engineTitle(*profile));
    }
}

void addPicture(Figures& figures, const LaidOutRow& row, std::size_t card, const layout::LaidPart& part) {
    const project::Part* const source = sourceOf(row, card, part);
    const auto* const picture = source != nullptr ? std::get_if<project::PicturePart>(source) : nullptr;
    if (picture == nullptr || picture->width <= 0 || picture->height <= 0) return;
    figures.rows.append(
        {QObject::tr("Image"),
         QObject::tr("%1 × %2 pixels").arg(figure(picture->width, 0), figure(picture->height, 0))});
    // With `object-fit: cover`, the side with fewer image pixels per CSS px limits the sharpness.
    const double density = std::min(picture->width / part.box.width, picture->height / part.box.height);
    figures.rows.append(
        {QObject::tr("Density"), QObject::tr("%1 image pixels per CSS px").arg(figure(density))});
}

}  // namespace

QString Figures::asSentence() const {
    QString text = title;
    for (const auto& [name, value] : rows)
        text += QStringLiteral(", ") + name + QLatin1Char(' ') + value;
    if (!note.isEmpty()) text += QStringLiteral(". ") + note;
    return text;
}

Figures figuresOf(const LayoutCache& layouts, std::size_t variant, std::size_t part) {
    const LaidOutRow row = layouts.of(variant);
    const layout::Layout& layout = row.layout;
    const layout::LaidPart& laid = layout.parts[part];
    const std::size_t card = cardOf(layout, part);
    Figures figures;
    figures.title = QObject::tr("%1, card %2").arg(roleTitle(kindOf(row, laid)), QString::number(card + 1));
    if (!laid.picture) {
        addText(figures, row, laid);
        addEngines(figures, layouts, variant, part);
    }
    figures.rows.append({laid.picture ? QObject::tr("Slot") : QObject::tr("Box"), size(laid.box)});
    if (laid.picture) addPicture(figures, row, card, laid);
    return figures;
}

FigureBox::FigureBox(QWidget* parent) : QWidget(parent) {
    setAttribute(Qt::WA_TransparentForMouseEvents);
    hide();
}

int FigureBox::nameWidth() const {
    int width = 0;
    for (const auto& row : figures_.rows)
        width = std::max(width, fontMetrics().horizontalAdvance(row.first));
    return width;
}

int FigureBox::innerWidth() const {
    int values = 0;
    for (const auto& row : figures_.rows)
        values = std::max(values, fontMetrics().horizontalAdvance(row.second));
    const int width =
        std::max(nameWidth() + between + values, fontMetrics().horizontalAdvance(figures_.title));
    return figures_.note.isEmpty() ? width : std::max(width, leastNote);
}

int FigureBox::noteHeight(int width) const {
    if (figures_.note.isEmpty()) return 0;
    return fontMetrics().boundingRect(QRect(0, 0, width, 1000), Qt::TextWordWrap, figures_.note).height() + 4;
}

QSize FigureBox::sizeHint() const {
    const int width = innerWidth();
    const int rows = (static_cast<int>(figures_.rows.size()) + 1) * fontMetrics().height() + 4;
    return {width + 2 * padding, rows + noteHeight(width) + 2 * padding};
}

void FigureBox::showBeside(const QRect& part, const Figures& figures) {
    figures_ = figures;
    const QSize size = sizeHint();
    const QRect room = parentWidget()->rect().adjusted(8, 8, -8, -8);
    int x = part.right() + 12;
    int y = std::clamp(part.top(), room.top(), std::max(room.top(), room.bottom() - size.height()));
    if (x + size.width() > room.right()) x = part.left() - 12 - size.width();
    if (x < room.left()) {
        // No room on the left or right: use the room below, or above.
        x = std::clamp(part.left(), room.left(), std::max(room.left(), room.right() - size.width()));
        y = part.bottom() + 8;
        if (y + size.height() > room.bottom()) y = std::max(room.top(), part.top() - 8 - size.height());
    }
    setGeometry(QRect(QPoint(x, y), size));
    raise();
    show();
    update();
}

void FigureBox::paintEvent(QPaintEvent*) {
    const Ink ink = Ink::of(palette());
    QPainter painter(this);
    painter.fillRect(rect(), ink.ground);
    painter.setPen(ink.line);
    painter.drawRect(rect().adjusted(0, 0, -1, -1));
    const int step = fontMetrics().height();
    int y = padding + fontMetrics().ascent();
    QFont bold = font();
    bold.setWeight(QFont::DemiBold);
    painter.setFont(bold);
    painter.setPen(ink.text);
    painter.drawText(padding, y, figures_.title);
    painter.setFont(font());
    y += 4;
    const int valuesAt = padding + nameWidth() + between;
    for (const auto& [name, value] : figures_.rows) {
        y += step;
        painter.setPen(ink.quiet);
        painter.drawText(padding, y, name);
        painter.setPen(ink.text);
        painter.drawText(valuesAt, y, value);
    }
    if (figures_.note.isEmpty()) return;
    const int top = y + fontMetrics().descent() + 4;
    painter.setPen(ink.quiet);
    painter.drawText(QRect(padding, top, width() - 2 * padding, height() - top), Qt::TextWordWrap,
                     figures_.note);
}

}  // namespace tenter::desktop::row
