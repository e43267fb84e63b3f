#include "window/start_page.h"

#include <QAbstractButton>
#include <QFileInfo>
#include <QGridLayout>
#include <QLabel>
#include <QPainter>
#include <QPushButton>
#include <QScrollArea>

#include "controls/inks.h"

namespace tenter::desktop::window {

namespace {

constexpr int columnWidth = 480;
constexpr int drawingHeight = 152;

/// An entry of a list: a title, and a description in secondary colour.
class Entry : public QAbstractButton {
public:
    Entry(const QString& title, const QString& description, QWidget* parent)
        : QAbstractButton(parent), description_(description) {
        setText(title);
        setAccessibleName(title);
        setAccessibleDescription(description);
        setFocusPolicy(Qt::StrongFocus);
        setCursor(Qt::PointingHandCursor);
        setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    }
    [[nodiscard]] QSize sizeHint() const override {
        return {columnWidth, 2 * fontMetrics().lineSpacing() + 20};
    }

protected:
    void paintEvent(QPaintEvent*) override {
        QPainter painter(this);
        if (underMouse()) painter.fillRect(rect(), palette().color(QPalette::Button));
        painter.setPen(controls::hairline(palette()));
        painter.drawLine(0, height() - 1, width(), height() - 1);
        QFont strong = font();
        strong.setWeight(QFont::DemiBold);
        painter.setFont(strong);
        painter.setPen(palette().color(QPalette::WindowText));
        const QRect box = rect().adjusted(12, 10, -12, -10);
        painter.drawText(box, Qt::AlignLeft | Qt::AlignTop,
                         painter.fontMetrics().elidedText(text(), Qt::ElideRight, box.width()));
        painter.setFont(font());
        painter.setPen(controls::quiet(palette()));
        painter.drawText(box, Qt::AlignLeft | Qt::AlignBottom,
                         painter.fontMetrics().elidedText(description_, Qt::ElideRight, box.width()));
        if (hasFocus()) {
            painter.setPen(QPen(palette().color(QPalette::Highlight), 2));
            painter.drawRect(rect().adjusted(1, 1, -1, -1));
        }
    }

private:
    QString description_;
};

/// A drawing of a row of cards between two widths, with a dimension line.
class Drawing : public QWidget {
public:
    explicit Drawing(QWidget* parent) : QWidget(parent) { setFixedHeight(drawingHeight); }

protected:
    void paintEvent(QPaintEvent*) override {
        QPainter painter(this);
        const QColor ink = palette().color(QPalette::WindowText);
        const int right = width() - 13;
        painter.setPen(QPen(ink, 1));
        constexpr int left = 12;
        constexpr int gap = 16;
        const int card = (right - left - 2 * gap) / 3;
        for (int i = 0; i < 3; ++i) {
            const QRect box(left + i * (card + gap), 40, card, 100);
            painter.drawRect(box);
            painter.drawLine(box.left(), box.top() + 44, box.right() + 1, box.top() + 44);
            painter.drawLine(box.topLeft(), QPoint(box.right() + 1, box.top() + 44));
            painter.drawLine(box.topRight() + QPoint(1, 0), QPoint(box.left(), box.top() + 44));
            for (int line = 0; line < 3; ++line)
                painter.fillRect(box.left() + 12, box.top() + 56 + line * 9,
                                 (card - 24) * (line == 2 ? 5 : 9) / 10, line == 0 ? 3 : 1, ink);
            painter.fillRect(box.left() + 12, box.bottom() - 10, 36, 4, palette().color(QPalette::Highlight));
        }
        painter.setRenderHint(QPainter::Antialiasing);
        painter.setPen(QPen(palette().color(QPalette::Highlight), 1.2));
        const double y = 20.5;
        painter.drawLine(QPointF(left, y), QPointF(right + 1, y));
        for (const double x : {left + 0.0, right + 1.0}) {
            painter.drawLine(QPointF(x - 5, y + 5), QPointF(x + 5, y - 5));
            painter.drawLine(QPointF(x, y - 8), QPointF(x, y + 12));
        }
    }
};

QLabel* heading(const QString& text, QWidget* parent) {
    auto* label = new QLabel(text, parent);
    label->setForegroundRole(QPalette::PlaceholderText);
    label->setContentsMargins(12, 0, 0, 0);
    return label;
}

}  // namespace

StartPage::StartPage(QWidget* parent)
    : QWidget(parent),
      column_(new QWidget(this)),
      samples_(new QVBoxLayout),
      recent_(new QVBoxLayout),
      recentTitle_(heading("Recent projects", column_)) {
    // The page scrolls if the window is too low.
    auto* scroll = new QScrollArea(this);
    auto* page = new QWidget;
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setWidgetResizable(true);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setWidget(page);
    scroll->setBackgroundRole(QPalette::Base);
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addWidget(scroll);
    auto* middle = new QGridLayout(page);
    middle->setContentsMargins(16, 24, 16, 24);
    middle->setRowStretch(0, 2);
    middle->setRowStretch(2, 3);
    middle->setColumnStretch(0, 1);
    middle->setColumnStretch(2, 1);
    column_->setFixedWidth(columnWidth);
    middle->addWidget(column_, 1, 1);
    auto* box = new QVBoxLayout(column_);
    box->setContentsMargins(0, 0, 0, 0);
    box->setSpacing(8);
    box->addWidget(new Drawing(column_));
    auto* title = new QLabel("A row of cards that holds together at every width", column_);
    QFont font = title->font();
    font.setPointSizeF(font.pointSizeF() * 1.5);
    title->setFont(font);
    title->setWordWrap(true);
    title->setContentsMargins(12, 8, 12, 0);
    box->addWidget(title);
    auto* open = new QPushButton("Open project…", column_);
    auto* line = new QHBoxLayout;
    line->setContentsMargins(12, 8, 12, 16);
    line->addWidget(open);
    auto* hint = new QLabel("or drop a .tenter.json file here", column_);
    hint->setForegroundRole(QPalette::PlaceholderText);
    line->addWidget(hint);
    line->addStretch(1);
    box->addLayout(line);
    box->addWidget(heading("Start from a sample", column_));
    samples_->setSpacing(0);
    box->addLayout(samples_);
    box->addSpacing(8);
    box->addWidget(recentTitle_);
    recent_->setSpacing(0);
    box->addLayout(recent_);
    connect(open, &QPushButton::clicked, this, &StartPage::openRequested);
    setRecent({});
}

QAbstractButton* StartPage::entry(const QString& title, const QString& description) {
    return new Entry(title, description, column_);
}

void StartPage::clear(QBoxLayout* box) {
    while (QLayoutItem* item = box->takeAt(0)) {
        delete item->widget();
        delete item;
    }
}

void StartPage::setSamples(const std::vector<Sample>& samples) {
    clear(samples_);
    for (const Sample& sample : samples) {
        QAbstractButton* button = entry(sample.name, sample.description);
        samples_->addWidget(button);
        const QString file = QString::fromStdString(sample.file.string());
        connect(button, &QAbstractButton::clicked, this, [this, file] { Q_EMIT sampleRequested(file); });
    }
    if (samples.empty()) samples_->addWidget(heading("No samples were found next to the program.", column_));
}

void StartPage::setRecent(const QStringList& files) {
    clear(recent_);
    recentTitle_->setVisible(!files.isEmpty());
    for (const QString& file : files.mid(0, 3)) {
        const QFileInfo info(file);
        QAbstractButton* button = entry(info.fileName(), info.path());
        recent_->addWidget(button);
        connect(button, &QAbstractButton::clicked, this, [this, file] { Q_EMIT fileRequested(file); });
    }
}

void StartPage::paintEvent(QPaintEvent*) {
    QPainter(this).fillRect(rect(), palette().color(QPalette::Base));
}

}  // namespace tenter::desktop::window
