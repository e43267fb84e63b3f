#include "start_page/start_page.h"

#include <QFileInfo>
#include <QHBoxLayout>
#include <QPainter>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>
#include <algorithm>

#include "controls/inks.h"
#include "controls/text_scale.h"

namespace tenter::desktop::start_page {

namespace {

constexpr int mostWidth = 1392;  // of the content, px: five tiles
constexpr int margin = 40;       // px beside the content
constexpr int tileFrame = 4;     // px: text is aligned with the thumbnails

QLabel* heading(const QString& text, QWidget* parent) {
    auto* label = new QLabel(text, parent);
    QFont font = label->font();
    font.setWeight(QFont::DemiBold);
    label->setFont(font);
    label->setContentsMargins(tileFrame, 0, 0, 0);
    return label;
}

/// The first choice of the page: a button in the accent colour.
class AccentButton : public QPushButton {
public:
    using QPushButton::QPushButton;
    [[nodiscard]] QSize sizeHint() const override {
        constexpr int leastWidth = 136;
        const int side = controls::scaled(16);
        const QString words = QString(text()).remove('&');
        return {std::max(leastWidth, fontMetrics().horizontalAdvance(words) + 2 * side),
                controls::scaled(40)};
    }
    [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }

protected:
    void paintEvent(QPaintEvent*) override {
        QPainter painter(this);
        const QColor accent = palette().color(QPalette::Highlight);
        painter.fillRect(rect(), isDown() ? accent.darker(120) : underMouse() ? accent.lighter(112) : accent);
        painter.setPen(palette().color(QPalette::HighlightedText));
        painter.drawText(rect(), Qt::AlignCenter | Qt::TextShowMnemonic, text());
        if (!hasFocus()) return;
        // A ring inside, because the colour of focus is that of the button.
        painter.setPen(QPen(palette().color(QPalette::HighlightedText), 2));
        painter.drawRect(rect().adjusted(4, 4, -4, -4));
    }
};

/// Shown where there are no tiles: what will be here.
QLabel* emptyState(const QString& text, QWidget* parent) {
    auto* label = new QLabel(text, parent);
    label->setForegroundRole(QPalette::PlaceholderText);
    label->setWordWrap(true);
    label->setContentsMargins(tileFrame, 0, 0, 0);
    return label;
}

}  // namespace

StartPage::StartPage(QWidget* parent) : QWidget(parent) {
    // The page scrolls if the window is too low.
    auto* scroll = new QScrollArea(this);
    auto* page = new QWidget;
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setWidgetResizable(true);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setWidget(page);
    scroll->viewport()->setAutoFillBackground(false);
    page->setAutoFillBackground(false);
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addWidget(scroll);
    auto* middle = new QHBoxLayout(page);
    middle->setContentsMargins(margin, 32, margin, 32);
    auto* column = new QWidget(page);
    column->setMaximumWidth(mostWidth);
    middle->addWidget(column);
    auto* box = new QVBoxLayout(column);
    box->setContentsMargins(0, 0, 0, 0);
    box->setSpacing(8);
    box->addWidget(buildHead(column));
    box->addSpacing(24);
    box->addWidget(heading(QObject::tr("Recent projects"), column));
    recent_ = new TileGrid(column);
    recent_->setMostLines(1);
    noRecent_ = emptyState(QObject::tr("Projects that you save or open will be here."), column);
    box->addWidget(recent_);
    box->addWidget(noRecent_);
    box->addSpacing(24);
    box->addWidget(heading(QObject::tr("Samples to look at and to start from"), column));
    samples_ = new TileGrid(column);
    noSamples_ = emptyState(QObject::tr("No samples were found next to the program."), column);
    box->addWidget(samples_);
    box->addWidget(noSamples_);
    box->addStretch(1);
    connect(&thumbnails_, &Thumbnails::arrived, this, [this](const QString& file, const QImage& image) {
        const auto [from, to] = waiting_.equal_range(file);
        for (auto at = from; at != to; ++at)
            if (at->second) at->second->setImage(image);
        waiting_.erase(from, to);
    });
    setSamples({});
    setRecent({});
}

QWidget* StartPage::buildHead(QWidget* parent) {
    auto* head = new QWidget(parent);
    auto* box = new QVBoxLayout(head);
    box->setContentsMargins(tileFrame, 0, tileFrame, 0);
    box->setSpacing(8);
    auto* title = new QLabel(QObject::tr("A row of cards that holds together at every width"), head);
    QFont font = title->font();
    font.setPointSizeF(font.pointSizeF() * 1.6);
    title->setFont(font);
    title->setWordWrap(true);
    box->addWidget(title);
    box->addSpacing(8);
    auto* line = new QHBoxLayout;
    line->setSpacing(8);
    auto* fresh = new AccentButton(QObject::tr("&New row…"), head);
    fresh->setToolTip(QObject::tr("Choose columns and a look, paste your text, drop pictures (Ctrl+N)"));
    QFont strong = fresh->font();
    strong.setWeight(QFont::DemiBold);
    fresh->setFont(strong);
    fresh->setFixedHeight(controls::scaled(40));
    fresh->setAttribute(Qt::WA_Hover);
    auto* open = new QPushButton(QObject::tr("&Open project…"), head);
    auto* import = new QPushButton(QObject::tr("&Import row from page…"), head);
    for (QPushButton* button : {open, import})
        button->setMinimumHeight(controls::scaled(40));
    line->addWidget(fresh);
    line->addWidget(open);
    line->addWidget(import);
    line->addSpacing(8);
    dropHint_ = new QLabel(QObject::tr("Or drop a project, pictures or an HTML page here."), head);
    dropHint_->setForegroundRole(QPalette::PlaceholderText);
    line->addWidget(dropHint_, 1);
    box->addLayout(line);
    connect(fresh, &QPushButton::clicked, this, &StartPage::newRowRequested);
    connect(open, &QPushButton::clicked, this, &StartPage::openRequested);
    connect(import, &QPushButton::clicked, this, &StartPage::importRequested);
    return head;
}

void StartPage::request(const QString& file, ProjectTile* tile) {
    const double ratio = devicePixelRatioF();
    waiting_.emplace(file, tile);
    thumbnails_.request(file,
                        QSizeF(ProjectTile::imageWidth * ratio, ProjectTile::imageHeight * ratio).toSize());
}

void StartPage::setSamples(const std::vector<Sample>& samples) {
    QList<QWidget*> tiles;
    for (const Sample& sample : samples) {
        auto* tile = new ProjectTile(sample.name, sample.description, samples_);
        const QString file = QString::fromStdString(sample.file.string());
        connect(tile, &QAbstractButton::clicked, this, [this, file] { Q_EMIT sampleRequested(file); });
        request(file, tile);
        tiles << tile;
    }
    samples_->setTiles(tiles);
    samples_->setVisible(!tiles.isEmpty());
    noSamples_->setVisible(tiles.isEmpty());
}

void StartPage::setRecent(const QStringList& files) {
    QList<QWidget*> tiles;
    for (const QString& file : files) {
        const QFileInfo info(file);
        auto* tile = new ProjectTile(info.fileName(), info.path(), recent_);
        tile->setElidesStart(true);
        connect(tile, &QAbstractButton::clicked, this, [this, file] { Q_EMIT fileRequested(file); });
        request(file, tile);
        tiles << tile;
    }
    recent_->setTiles(tiles);
    recent_->setVisible(!tiles.isEmpty());
    noRecent_->setVisible(tiles.isEmpty());
}

void StartPage::setDropping(bool on) {
    isDropping_ = on;
    update();
}

void StartPage::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.fillRect(rect(), palette().color(QPalette::Base));
    if (!isDropping_) return;
    painter.setPen(QPen(palette().color(QPalette::Highlight), 2, Qt::DashLine));
    painter.drawRect(rect().adjusted(8, 8, -8, -8));
}

}  // namespace tenter::desktop::start_page
