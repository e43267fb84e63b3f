#include "row/row_view.h"

#include <QKeyEvent>
#include <QPainter>
#include <QScrollBar>
#include <QWheelEvent>
#include <algorithm>
#include <cmath>

#include "controls/glossary.h"
#include "document/wording.h"
#include "row/figures.h"
#include "row/finding_mark.h"
#include "row/ink.h"
#include "row/lookup.h"

namespace tenter::desktop::row {

namespace {

constexpr int edgeReach = 6;   // view px from the pointer to the edge within which it can be dragged
constexpr int wheelStep = 64;  // view px per step of the wheel
constexpr double leastZoom = 0.1;
constexpr double mostZoom = 8;

void place(Canvas& canvas, const Projection& at, double ratio) {
    canvas.left = static_cast<int>(std::lround(at.left * ratio));
    canvas.top = static_cast<int>(std::lround(at.top * ratio));
}

/// Caption of a variant: `1 column at this width, heading 24.13 px`.
QString captionOf(const Viewing& viewing, const std::string& role) {
    const layout::PreparedRow& row = viewing.row();
    QStringList facts{QObject::tr("%1 at this width")
                          .arg(columnsTitle(row.settings(viewing.band()).row.columns.value_or(1)))};
    if (const auto size = fontSizeHere(viewing, role))
        facts << QString::fromStdString(role) + ' ' + pixels(*size);
    return facts.join(", ");
}

}  // namespace

RowView::RowView(Viewing& viewing, const Survey& survey, QWidget* parent)
    : QAbstractScrollArea(parent),
      viewing_(viewing),
      survey_(survey),
      row_(viewing, pictures_),
      variantViews_(viewing) {
    setFrameShape(QFrame::NoFrame);
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("Row at the current width"));
    viewport()->setMouseTracking(true);
    viewport()->setAttribute(Qt::WA_OpaquePaintEvent);
    viewport()->setAutoFillBackground(false);
    figures_ = new FigureBox(viewport());
    addActions();
    connect(&viewing_, &Viewing::layoutChanged, this, &RowView::onLayout);
    connect(&viewing_, &Viewing::rowChanged, &pictures_, &Pictures::retryMissing);
    connect(&viewing_.document(), &Document::opened, this, &RowView::onOpened);
    connect(&viewing_, &Viewing::variantChanged, this, &RowView::ensureSheetVisible);
    connect(&viewing_, &Viewing::selectionChanged, this, &RowView::onSelection);
    connect(&survey_, &Survey::chosenChanged, this, &RowView::redraw);
    connect(&survey_, &Survey::findingShown, this, &RowView::revealChosen);
    connect(&viewing_, &Viewing::wentThere, this, &RowView::revealChosen);
    connect(&pictures_, &Pictures::arrived, this, &RowView::redraw);
    connect(&viewing_.document(), &Document::fileChanged, &pictures_, &Pictures::retryMissing);
}

RowView::~RowView() = default;

void RowView::addActions() {
    const auto toggle = [this](const QString& text, const QString& description,
                               const QKeySequence& shortcut) {
        auto* action = new QAction(text, this);
        action->setCheckable(true);
        action->setShortcut(shortcut);
        action->setToolTip(description);
        action->setStatusTip(description);
        connect(action, &QAction::toggled, this, &RowView::redraw);
        return action;
    };
    boxes_ = toggle(tr("&Boxes and spacing"), tr("Show boxes with their padding, margins and gaps"),
                    Qt::CTRL | Qt::Key_1);
    measure_ = toggle(tr("&Measure"),
                      tr("Show the measure, and where the shortest and the longest comfortable line end"),
                      Qt::CTRL | Qt::Key_2);
    tight_ = toggle(tr("&Tight fits"), QString::fromUtf8(glossary::tightFit), Qt::CTRL | Qt::Key_3);
    engines_ = toggle(tr("Chromium/Firefox &differences"),
                      tr("Mark text that has a different number of lines in Chromium and Firefox"),
                      Qt::CTRL | Qt::Key_4);
    engines_->setChecked(true);
    fitAction_ = new QAction(tr("&Fit to window"), this);
    fitAction_->setCheckable(true);
    connect(fitAction_, &QAction::toggled, this, &RowView::setFit);
    allVariants_ = new QAction(tr("All &variants"), this);
    allVariants_->setCheckable(true);
    allVariants_->setShortcut(Qt::Key_F3);
    allVariants_->setToolTip(tr("Show every variant at this width, to compare their text"));
    allVariants_->setStatusTip(allVariants_->toolTip());
    connect(allVariants_, &QAction::toggled, this, &RowView::setAllVariants);
    actualSize_ = new QAction(tr("&Actual size"), this);
    actualSize_->setShortcut(Qt::CTRL | Qt::Key_0);
    connect(actualSize_, &QAction::triggered, this, [this] { setZoom(1); });
}

// ---- Content

void RowView::redraw() {
    stale_ = true;
    viewport()->update();
}

void RowView::onLayout() {
    updateScrollBars();
    hovered_.reset();
    focused_.reset();
    if (const auto part = partOf(viewing_.layout(), viewing_.selection());
        byKeyboard_ && hasFocus() && part && kindOf(viewing_, viewing_.layout().parts[*part]) == "button")
        focused_ = part;
    if (figured_ && drag_ != Drag::Edge) figured_.reset();
    showFigures();
    redraw();
}

void RowView::onOpened() {
    row_.clear();
    variantPainters_.clear();
    pictures_.clear();
    horizontalScrollBar()->setValue(0);
    verticalScrollBar()->setValue(0);
}

void RowView::onSelection() {
    onLayout();
    describe();
}

// The accessible description has the text that is visible in the view: the figures of the selected part and
// the captions.
void RowView::describe() {
    QStringList sentences;
    if (const auto part = partOf(viewing_.layout(), viewing_.selection()))
        sentences << figuresOf(viewing_, *part).asSentence();
    for (std::size_t i = 0; showsAll() && i < sheets_.all.size(); ++i)
        sentences << tr("%1: %2.").arg(variantTitle(viewing_.shown().variants[i]),
                                       captionOf(viewingOf(i), viewing_.role()));
    setAccessibleDescription(sentences.join(' '));
}

const Viewing& RowView::viewingOf(std::size_t sheet) const {
    return showsAll() ? variantViews_.of(sheet) : viewing_;
}

RowPainter& RowView::painterOf(std::size_t sheet) {
    if (sheet == activeSheet()) return row_;
    if (sheet >= variantPainters_.size()) variantPainters_.resize(sheet + 1);
    std::unique_ptr<RowPainter>& painter = variantPainters_[sheet];
    if (!painter) painter = std::make_unique<RowPainter>(viewingOf(sheet), pictures_);
    return *painter;
}

void RowView::setAllVariants(bool on) {
    setAccessibleName(on ? tr("All variants at the current width") : tr("Row at the current width"));
    // All variants are fitted to the window. A single variant gets back the zoom mode it had before.
    if (on) fitAlone_ = fit_;
    setFit(on || fitAlone_);
    onLayout();
    describe();
    if (on)
        ensureSheetVisible();
    else
        horizontalScrollBar()->setValue(0);
}

void RowView::ensureSheetVisible() {
    updateScrollBars();
    if (!showsAll()) return;
    const Sheet& sheet = sheets_.all[activeSheet()];
    const int top = static_cast<int>(std::floor(sheet.caption.top()));
    const int left = static_cast<int>(std::floor(sheet.caption.left())) - gutter;
    QScrollBar* const down = verticalScrollBar();
    QScrollBar* const right = horizontalScrollBar();
    if (top < down->value() || sheet.page.bottom() > down->value() + viewport()->height())
        down->setValue(top);
    if (left < right->value() || sheet.page.right() > right->value() + viewport()->width())
        right->setValue(left);
}

QPoint RowView::scrolled() const {
    return {horizontalScrollBar()->value(), verticalScrollBar()->value()};
}

Projection RowView::projection(std::size_t sheet) const {
    const QPointF corner =
        sheet < sheets_.all.size() ? sheets_.all[sheet].page.topLeft() : QPointF(gutter, 0);
    return {zoom_, corner.x() - scrolled().x(), corner.y() - scrolled().y()};
}

QPointF RowView::pageAt(const QPointF& view) const {
    return pageAt(view, activeSheet());
}

QPointF RowView::pageAt(const QPointF& view, std::size_t sheet) const {
    const Projection at = projection(sheet);
    return {(view.x() - at.left) / at.zoom, (view.y() - at.top) / at.zoom};
}

std::vector<Sheet> RowView::sheetsInView() const {
    std::vector<Sheet> sheets = sheets_.all;
    for (Sheet& sheet : sheets) {
        sheet.caption.translate(-scrolled());
        sheet.page.translate(-scrolled());
    }
    return sheets;
}

std::optional<std::size_t> RowView::sheetAt(const QPointF& view) const {
    if (!showsAll()) return 0;
    const QPointF at = view + scrolled();
    for (std::size_t i = 0; i < sheets_.all.size(); ++i)
        if (sheets_.all[i].page.contains(at) || sheets_.all[i].caption.contains(at)) return i;
    return std::nullopt;
}

std::optional<Viewing::Selection> RowView::placeAt(const QPointF& view) const {
    const auto sheet = sheetAt(view);
    if (!sheet) return std::nullopt;
    const layout::Layout& layout = viewingOf(*sheet).layout();
    const QPointF page = pageAt(view, *sheet);
    if (const auto part = partAt(layout, page)) return selectionOf(layout, *part);
    if (const auto card = cardAt(layout, page)) return Viewing::Selection{static_cast<int>(*card), -1};
    return std::nullopt;
}

void RowView::updateScrollBars() {
    const std::size_t variants = viewing_.shown().variants.size();
    const bool all = allVariants_->isChecked() && variants > 1;
    std::vector<QSizeF> pages;
    const auto add = [&](const layout::Layout& layout) {
        pages.emplace_back(layout.width, layout.pageHeight);
    };
    if (all)
        for (std::size_t i = 0; i < variants; ++i)
            add(variantViews_.of(i).layout());
    else
        add(viewing_.layout());
    const QSize view = viewport()->size();
    if (fit_) {
        const double fitted = std::max(leastZoom, fittingZoom(pages, view));
        if (fitted != zoom_) {
            zoom_ = fitted;
            Q_EMIT zoomChanged(zoom_);
        }
    }
    // While an edge is dragged, no page moves to another line.
    if (drag_ != Drag::Edge) across_ = fittingAcross(pages, zoom_, view.width());
    sheets_ = arranged(pages, zoom_, across_);
    const int width = static_cast<int>(std::ceil(sheets_.size.width()));
    const int height = static_cast<int>(std::ceil(sheets_.size.height()));
    horizontalScrollBar()->setRange(0, std::max(0, width - view.width()));
    horizontalScrollBar()->setPageStep(view.width());
    horizontalScrollBar()->setSingleStep(wheelStep / 2);
    verticalScrollBar()->setRange(0, std::max(0, height - view.height()));
    verticalScrollBar()->setPageStep(view.height());
    verticalScrollBar()->setSingleStep(wheelStep / 2);
}

void RowView::setFit(bool fit) {
    if (fit == fit_) return;
    fit_ = fit;
    fitAction_->setChecked(fit);
    if (!fit) zoom_ = 1;
    updateScrollBars();
    Q_EMIT zoomChanged(zoom_);
    redraw();
}

void RowView::setZoom(double zoom) {
    zoomAbout(zoom, QPointF(gutter, 0));
}

void RowView::zoomAbout(double zoom, const QPointF& view) {
    zoom = std::clamp(zoom, leastZoom, mostZoom);
    if (fit_) {
        fit_ = false;
        fitAction_->setChecked(false);
    }
    const std::size_t sheet = sheetAt(view).value_or(activeSheet());
    const QPointF page = pageAt(view, sheet);
    zoom_ = zoom;
    updateScrollBars();
    const QPointF to = sheets_.all[sheet].page.topLeft() + page * zoom_ - view;
    horizontalScrollBar()->setValue(static_cast<int>(std::lround(to.x())));
    verticalScrollBar()->setValue(static_cast<int>(std::lround(to.y())));
    Q_EMIT zoomChanged(zoom_);
    showFigures();
    redraw();
}

void RowView::ensureVisible(std::size_t part) {
    const QRectF rect = projection().rect(viewing_.layout().parts[part].box).adjusted(-16, -16, 16, 16);
    const auto reveal = [](QScrollBar* bar, double from, double to, double room) {
        if (from < 0 || to - from > room)
            bar->setValue(bar->value() + static_cast<int>(std::floor(from)));
        else if (to > room)
            bar->setValue(bar->value() + static_cast<int>(std::ceil(to - room)));
    };
    reveal(horizontalScrollBar(), rect.left(), rect.right(), viewport()->width());
    reveal(verticalScrollBar(), rect.top(), rect.bottom(), viewport()->height());
}

// ---- Painting

void RowView::render() {
    const double ratio = viewport()->devicePixelRatioF();
    const QSize size(static_cast<int>(std::ceil(viewport()->width() * ratio)),
                     static_cast<int>(std::ceil(viewport()->height() * ratio)));
    if (canvas_.image.size() != size) canvas_.image = QImage(size, QImage::Format_RGB32);
    canvas_.image.setDevicePixelRatio(1);
    canvas_.scale = zoom_ * ratio;
    if (showsAll()) {
        renderSheets();
    } else {
        place(canvas_, projection(), ratio);
        row_.paint(canvas_, attentionTo(0), Ink::of(palette()).desk);
    }
    canvas_.image.setDevicePixelRatio(ratio);
    const auto overlays = overlayActions();
    if (showsAll() || survey_.chosen() ||
        std::any_of(overlays.begin(), overlays.end(), [](const QAction* one) { return one->isChecked(); })) {
        QPainter painter(&canvas_.image);
        for (std::size_t i = 0; i < sheets_.all.size(); ++i)
            paintOver(painter, i);
    }
    stale_ = false;
}

// Each page is painted into an image that shares the memory of its part of the view.
void RowView::renderSheets() {
    const QColor desk = Ink::of(palette()).desk;
    canvas_.image.fill(desk);
    const double ratio = viewport()->devicePixelRatioF();
    for (std::size_t i = 0; i < sheets_.all.size(); ++i) {
        Canvas piece;
        piece.scale = canvas_.scale;
        place(piece, projection(i), ratio);
        const layout::Layout& layout = viewingOf(i).layout();
        const QRect seen =
            piece.snapped({0, 0, layout.width, layout.pageHeight}).intersected(canvas_.image.rect());
        if (seen.isEmpty()) continue;
        const auto stride = canvas_.image.bytesPerLine();
        piece.image = QImage(canvas_.image.scanLine(seen.top()) + std::ptrdiff_t{4} * seen.left(),
                             seen.width(), seen.height(), stride, canvas_.image.format());
        piece.left -= seen.left();
        piece.top -= seen.top();
        painterOf(i).paint(piece, attentionTo(i), desk);
    }
}

Attention RowView::attentionTo(std::size_t sheet) const {
    Attention attention;
    if (hovered_ && hovered_->sheet == sheet) attention.hovered = hovered_->part;
    if (sheet == activeSheet()) attention.focused = focused_;
    return attention;
}

void RowView::paintOver(QPainter& painter, std::size_t sheet) {
    QRectF seen(viewport()->rect());
    if (showsAll()) {
        paintCaption(painter, sheet);
        seen = seen.intersected(sheetsInView()[sheet].page);
        if (seen.isEmpty()) return;
    }
    painter.save();
    painter.setClipRect(seen);
    QFont small = font();
    small.setPixelSize(11);
    painter.setFont(small);
    OverlayTools tools{painter, viewingOf(sheet),  painterOf(sheet), projection(sheet),
                       seen,    Ink::of(palette())};
    if (const auto chosen = survey_.chosen(); chosen && sheet == activeSheet())
        paintFinding(tools, survey_.findings()[*chosen]);
    if (boxes_->isChecked()) paintBoxes(tools);
    if (measure_->isChecked()) paintMeasure(tools);
    if (tight_->isChecked()) paintTightFits(tools);
    if (engines_->isChecked()) paintEngines(tools);
    painter.restore();
}

void RowView::paintCaption(QPainter& painter, std::size_t sheet) const {
    const QRectF caption = sheetsInView()[sheet].caption;
    if (!caption.intersects(QRectF(viewport()->rect()))) return;
    const Viewing& shown = viewingOf(sheet);
    const Ink ink = Ink::of(palette());
    const QColor quiet = legible(ink.quiet, ink.desk, ink.text);
    QFont strong = font();
    strong.setWeight(QFont::DemiBold);
    const QFontMetricsF metrics(strong);
    const double baseline = std::round(caption.bottom() - 8);
    const bool active = sheet == activeSheet();
    const QString title = variantTitle(shown.shown().variants[sheet]);
    painter.setFont(strong);
    painter.setPen(active ? legible(ink.accentText, ink.desk, ink.text) : ink.text);
    painter.drawText(QPointF(caption.left(), baseline), title);
    if (active)
        painter.fillRect(QRectF(caption.left(), caption.bottom() - 3, metrics.horizontalAdvance(title), 2),
                         ink.accent);
    const double left = caption.left() + metrics.horizontalAdvance(title) + 12;
    const double room = caption.right() - left;
    painter.setFont(font());
    painter.setPen(quiet);
    const QString shownText =
        QFontMetricsF(font()).elidedText(captionOf(shown, viewing_.role()), Qt::ElideRight, room);
    painter.drawText(QPointF(left, baseline), shownText);
}

void RowView::paintEvent(QPaintEvent* event) {
    if (stale_ || canvas_.image.devicePixelRatio() != viewport()->devicePixelRatioF()) render();
    QPainter painter(viewport());
    painter.setClipRect(event->rect());
    blit(painter, canvas_.image);
    if (viewing_.layout().cards.empty()) paintEmpty(painter);
    for (std::size_t i = 0; i < sheets_.all.size(); ++i) {
        paintSelection(painter, i);
        paintEdge(painter, i);
    }
    if (hasFocus() && byKeyboard_) {
        painter.setRenderHint(QPainter::Antialiasing, false);
        painter.setPen(QPen(Ink::of(palette()).accent, 2));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(viewport()->rect().adjusted(1, 1, -1, -1));
    }
}

void RowView::paintEmpty(QPainter& painter) {
    painter.setPen(QColor(0x44, 0x44, 0x44));
    const QRectF page(projection().left, 0, viewing_.width() * zoom_, viewport()->height());
    painter.drawText(page.intersected(QRectF(viewport()->rect())), Qt::AlignCenter | Qt::TextWordWrap,
                     tr("No cards yet. Add a card in the Words panel, or drop pictures here."));
}

void RowView::revealChosen() {
    if (const auto part = partOf(viewing_.layout(), viewing_.selection())) ensureVisible(*part);
}

// Marks at the corners do not hide the part. They are fainter in variants that are not the current one.
void RowView::paintSelection(QPainter& painter, std::size_t sheet) {
    const layout::Layout& layout = viewingOf(sheet).layout();
    const auto part = partOf(layout, viewing_.selection());
    if (!part) return;
    const QColor ground = painterOf(sheet).groundOf(layout.cards[cardOf(layout, *part)]);
    const QColor strong = contrast(ground, Qt::black) > contrast(ground, Qt::white) ? Qt::black : Qt::white;
    const QColor accent = sheet == activeSheet() ? legible(Ink::of(palette()).accent, ground, strong, 3)
                                                 : mixed(ground, strong, 0.6);
    const QRectF box =
        QRectF(projection(sheet).rect(layout.parts[*part].box).toAlignedRect()).adjusted(-4, -4, 4, 4);
    const double arm = std::min({12.0, box.width() / 3, box.height() / 3});
    painter.setRenderHint(QPainter::Antialiasing, false);
    for (const QPointF& corner : {box.topLeft(), box.topRight(), box.bottomLeft(), box.bottomRight()}) {
        const double dx = corner.x() == box.left() ? 1 : -1;
        const double dy = corner.y() == box.top() ? 1 : -1;
        painter.fillRect(QRectF(corner, QSizeF(dx * arm, dy * 2)).normalized(), accent);
        painter.fillRect(QRectF(corner, QSizeF(dx * 2, dy * arm)).normalized(), accent);
    }
}

double RowView::edgeX(std::size_t sheet) const {
    return std::round(projection(sheet).x(viewing_.layout().width));
}

std::optional<std::size_t> RowView::edgeAt(const QPointF& view) const {
    const std::vector<Sheet> sheets = sheetsInView();
    for (std::size_t i = 0; i < sheets.size(); ++i)
        if (std::abs(view.x() - edgeX(i) - 2) <= edgeReach &&
            (!showsAll() || (view.y() >= sheets[i].page.top() && view.y() < sheets[i].page.bottom())))
            return i;
    return std::nullopt;
}

QRect RowView::edgeStrip(std::size_t sheet) const {
    return {static_cast<int>(edgeX(sheet)) - 8, 0, 24, viewport()->height()};
}

void RowView::paintEdge(QPainter& painter, std::size_t sheet) const {
    QRectF along(viewport()->rect());
    if (showsAll()) {
        const QRectF page = sheetsInView()[sheet].page;
        along.setTop(std::max(along.top(), std::round(page.top())));
        along.setBottom(std::min(along.bottom(), std::round(page.bottom())));
        if (along.height() <= 0) return;
    }
    const Ink ink = Ink::of(palette());
    const double x = edgeX(sheet);
    const bool hot = hotEdge_ == sheet;
    const QColor colour = hot ? ink.accent : mixed(ink.desk, ink.text, 0.5);
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.fillRect(QRectF(x, along.top(), hot ? 2 : 1, along.height()), colour);
    const double tall = std::min(40.0, along.height());
    const QRectF grip(x + 4, std::round(along.center().y() - tall / 2), 5, tall);
    painter.fillRect(QRectF(grip.left(), grip.top(), 1, grip.height()), colour);
    painter.fillRect(QRectF(grip.left() + 3, grip.top(), 1, grip.height()), colour);
}

// ---- Pointer

void RowView::setHotEdge(std::optional<std::size_t> sheet) {
    if (sheet == hotEdge_) return;
    for (const auto& one : {hotEdge_, sheet})
        if (one && *one < sheets_.all.size()) viewport()->update(edgeStrip(*one));
    hotEdge_ = sheet;
}

void RowView::setHovered(std::optional<Pointed> pointed) {
    if (pointed == hovered_) return;
    const auto answers = [this](const std::optional<Pointed>& at) {
        if (!at || at->sheet >= sheets_.all.size()) return false;
        const Viewing& viewing = viewingOf(at->sheet);
        const auto* style = styleOf(viewing, viewing.layout().parts[at->part]);
        return style != nullptr &&
               (style->hover.colour || style->hover.background || style->hover.borderColour);
    };
    const bool changes = answers(pointed) || answers(hovered_);
    hovered_ = pointed;
    if (changes) redraw();
}

void RowView::hover(const QPointF& view) {
    setHotEdge(edgeAt(view));
    const auto sheet = hotEdge_ ? std::nullopt : sheetAt(view);
    const auto pointed = [&](const std::optional<std::size_t>& part) {
        return part ? std::optional(Pointed{*sheet, *part}) : std::nullopt;
    };
    const bool onCaption = sheet && sheetsInView()[*sheet].caption.contains(view);
    viewport()->setCursor(hotEdge_    ? Qt::SizeHorCursor
                          : onCaption ? Qt::PointingHandCursor
                                      : Qt::ArrowCursor);
    setHovered(sheet ? pointed(hoverTarget(viewingOf(*sheet), pageAt(view, *sheet))) : std::nullopt);
    const auto under =
        sheet ? pointed(partAt(viewingOf(*sheet).layout(), pageAt(view, *sheet))) : std::nullopt;
    if (under == figured_) return;
    figured_ = under;
    showFigures();
}

void RowView::unhover() {
    setHotEdge(std::nullopt);
    setHovered(std::nullopt);
    figured_.reset();
    showFigures();
}

void RowView::showFigures() {
    std::optional<Pointed> at = figured_;
    if (!at && byKeyboard_ && hasFocus())
        if (const auto part = partOf(viewing_.layout(), viewing_.selection()))
            at = Pointed{activeSheet(), *part};
    if (!at || at->sheet >= sheets_.all.size() || drag_ != Drag::None ||
        at->part >= viewingOf(at->sheet).layout().parts.size()) {
        figures_->hide();
        return;
    }
    const Viewing& shown = viewingOf(at->sheet);
    figures_->showBeside(projection(at->sheet).rect(shown.layout().parts[at->part].box).toAlignedRect(),
                         figuresOf(shown, at->part));
}

void RowView::mousePressEvent(QMouseEvent* event) {
    byKeyboard_ = false;
    const auto edge = edgeAt(event->position());
    if (event->button() == Qt::MiddleButton) {
        drag_ = Drag::Pan;
        dragFrom_ = event->position();
        dragScroll_ = scrolled();
        viewport()->setCursor(Qt::ClosedHandCursor);
    } else if (event->button() == Qt::LeftButton && edge) {
        drag_ = Drag::Edge;
        setHotEdge(edge);
        dragFrom_ = event->position();
        dragWidth_ = viewing_.width();
    } else if (event->button() == Qt::LeftButton) {
        press(event->position());
        return;
    }
    showFigures();
}

// A click on the page or the caption of another variant makes it the current one.
void RowView::press(const QPointF& view) {
    Viewing::Selection place;
    if (const auto sheet = sheetAt(view)) {
        const layout::Layout& layout = viewingOf(*sheet).layout();
        if (const auto part = partAt(layout, pageAt(view, *sheet))) place = selectionOf(layout, *part);
        if (showsAll()) viewing_.setVariant(*sheet);
    }
    viewing_.select(place);
    hover(view);
}

void RowView::mouseMoveEvent(QMouseEvent* event) {
    const QPointF moved = event->position() - dragFrom_;
    if (drag_ == Drag::Edge) {
        // Pages to the left of the dragged one grow too and move it, so the width changes by a share of the
        // distance.
        const int growing = hotEdge_ && *hotEdge_ < sheets_.all.size() ? sheets_.all[*hotEdge_].place + 1 : 1;
        viewing_.setWidth(std::round(dragWidth_ + moved.x() / (zoom_ * growing)));
    } else if (drag_ == Drag::Pan) {
        horizontalScrollBar()->setValue(dragScroll_.x() - static_cast<int>(std::lround(moved.x())));
        verticalScrollBar()->setValue(dragScroll_.y() - static_cast<int>(std::lround(moved.y())));
    } else {
        hover(event->position());
    }
}

void RowView::mouseReleaseEvent(QMouseEvent* event) {
    if (drag_ == Drag::None) return;
    drag_ = Drag::None;
    onLayout();
    hover(event->position());
}

void RowView::wheelEvent(QWheelEvent* event) {
    const QPoint turned = event->angleDelta();
    if ((event->modifiers() & Qt::ControlModifier) != 0) {
        zoomAbout(zoom_ * std::pow(1.25, turned.y() / 120.0), event->position());
    } else {
        QPoint by = event->pixelDelta();
        if (by.isNull()) by = QPoint(turned.x() * wheelStep / 120, turned.y() * wheelStep / 120);
        if ((event->modifiers() & Qt::ShiftModifier) != 0) by = by.transposed();
        horizontalScrollBar()->setValue(horizontalScrollBar()->value() - by.x());
        verticalScrollBar()->setValue(verticalScrollBar()->value() - by.y());
        if (drag_ == Drag::None) hover(event->position());
    }
    event->accept();
}

bool RowView::viewportEvent(QEvent* event) {
    if (event->type() == QEvent::Leave && drag_ == Drag::None) unhover();
    return QAbstractScrollArea::viewportEvent(event);
}

// ---- Keyboard

bool RowView::moveSelection(int cards, int parts) {
    const layout::Layout& layout = viewing_.layout();
    if (layout.cards.empty() || layout.parts.empty()) return false;
    const auto current = partOf(layout, viewing_.selection());
    byKeyboard_ = true;
    std::size_t next = 0;
    if (current) {
        const auto card = static_cast<int>(cardOf(layout, *current));
        const int to = card + cards;
        if (to < 0 || to >= static_cast<int>(layout.cards.size())) return false;
        const layout::LaidCard& from = layout.cards[static_cast<std::size_t>(card)];
        const layout::LaidCard& target = layout.cards[static_cast<std::size_t>(to)];
        if (target.partCount == 0) return false;
        const int place = static_cast<int>(*current - from.firstPart) + parts;
        if (place < 0 || (cards == 0 && place >= static_cast<int>(target.partCount))) return false;
        next =
            target.firstPart + std::min<std::size_t>(static_cast<std::size_t>(place), target.partCount - 1);
    } else if (cards < 0) {
        next = layout.cards.back().firstPart;
    }
    viewing_.select(selectionOf(layout, next));
    ensureVisible(next);
    onSelection();
    return true;
}

void RowView::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
        case Qt::Key_Up:
            moveSelection(0, -1);
            return;
        case Qt::Key_Down:
            moveSelection(0, 1);
            return;
        case Qt::Key_PageUp:
            verticalScrollBar()->triggerAction(QAbstractSlider::SliderPageStepSub);
            return;
        case Qt::Key_PageDown:
            verticalScrollBar()->triggerAction(QAbstractSlider::SliderPageStepAdd);
            return;
        case Qt::Key_Home:
            verticalScrollBar()->setValue(0);
            return;
        case Qt::Key_End:
            verticalScrollBar()->setValue(verticalScrollBar()->maximum());
            return;
        case Qt::Key_Escape:
            if (viewing_.selection() != Viewing::Selection{}) {
                viewing_.select({});
                return;
            }
            break;
        default:
            break;
    }
    event->ignore();
}

// Tab moves from card to card, and leaves the view after the last one.
bool RowView::focusNextPrevChild(bool next) {
    return moveSelection(next ? 1 : -1, 0) || QAbstractScrollArea::focusNextPrevChild(next);
}

void RowView::focusInEvent(QFocusEvent* event) {
    QAbstractScrollArea::focusInEvent(event);
    byKeyboard_ = event->reason() == Qt::TabFocusReason || event->reason() == Qt::BacktabFocusReason ||
                  event->reason() == Qt::ShortcutFocusReason;
    onLayout();
}

void RowView::focusOutEvent(QFocusEvent* event) {
    QAbstractScrollArea::focusOutEvent(event);
    onLayout();
}

// ---- Widget

void RowView::resizeEvent(QResizeEvent* event) {
    QAbstractScrollArea::resizeEvent(event);
    updateScrollBars();
    redraw();
}

void RowView::scrollContentsBy(int, int) {
    if (figured_ || figures_->isVisible()) showFigures();
    redraw();
}

void RowView::changeEvent(QEvent* event) {
    QAbstractScrollArea::changeEvent(event);
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) redraw();
}

}  // namespace tenter::desktop::row
