#include "given/given_dialog.h"

#include <QDragEnterEvent>
#include <QMimeData>
#include <QShortcut>
#include <QSplitter>
#include <QVBoxLayout>

#include "given/wording.h"
#include "project/utf8.h"

namespace tenter::desktop::given {

namespace {

QLabel* paragraph(const QString& text, QWidget* parent) {
    auto* label = new QLabel(text, parent);
    label->setWordWrap(true);
    return label;
}

QLabel* demiBold(QLabel* label) {
    QFont font = label->font();
    font.setWeight(QFont::DemiBold);
    label->setFont(font);
    return label;
}

QString takenOver(std::size_t cards) {
    if (cards == 0) return "One step; undo takes it back.";
    return QString("Takes the place of the %1 card%2 there %3, words and all; undo brings back what was.")
        .arg(cards)
        .arg(cards == 1 ? "" : "s", cards == 1 ? "is" : "are");
}

}  // namespace

GivenDialog::GivenDialog(Document& document, QWidget* parent)
    : QDialog(parent),
      document_(document),
      reader_(new RowReader(document, this)),
      page_(new PageSide(this)),
      noRow_(new NoRowSide),
      row_(new RowSide),
      stack_(new QStackedWidget(this)) {
    setWindowTitle("Take a page’s row");
    setWindowModality(Qt::WindowModal);
    setAcceptDrops(true);
    resize(1120, 680);
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(24, 24, 24, 16);
    box->setSpacing(16);
    auto* about = paragraph(
        "For a row of cards that a page prints already: its elements stay as they are, and the stylesheet is "
        "written for them. Nothing of the page is run or fetched.",
        this);
    about->setForegroundRole(QPalette::PlaceholderText);
    box->addWidget(about);
    auto* left = new QWidget(this);
    auto* leftBox = new QVBoxLayout(left);
    leftBox->setContentsMargins(0, 0, 8, 0);
    leftBox->setSpacing(16);
    leftBox->addWidget(page_, 1);
    leftBox->addWidget(buildFound(), 1);
    stack_->addWidget(empty_ = buildEmpty());
    stack_->addWidget(noRow_);
    stack_->addWidget(row_);
    auto* across = new QSplitter(Qt::Horizontal, this);
    across->addWidget(left);
    across->addWidget(stack_);
    across->setChildrenCollapsible(false);
    across->setStretchFactor(0, 0);
    across->setStretchFactor(1, 1);
    across->setSizes({320, 750});
    box->addWidget(across, 1);
    box->addLayout(buildFoot());

    connect(page_, &PageSide::given, this, [this](const QByteArray& bytes, const QString& file, bool atOnce) {
        failed_.clear();
        reader_->setPage(bytes, file.toStdString(), atOnce);
    });
    connect(page_, &PageSide::failed, this, [this](const QString& why) {
        failed_ = why;
        follow();
    });
    connect(noRow_, &NoRowSide::cardsSaid, this, [this](const QString& selector) {
        reader_->say({"card", selector.toStdString()});
    });
    connect(row_->bar(), &RoleBar::roleChosen, this, [this](quint32 node, const QString& role) {
        reader_->pick({node, role.toStdString()});
    });
    connect(row_->bar(), &RoleBar::selectorTyped, this, [this](const QString& role, const QString& selector) {
        reader_->say({role.toStdString(), selector.toStdString()});
    });
    connect(row_, &RowSide::themeTyped, this,
            [this](const QString& css) { reader_->sayTheme(css.toStdString()); });
    connect(reader_, &RowReader::started, this, &GivenDialog::follow);
    connect(reader_, &RowReader::finished, this, &GivenDialog::showRow);
    showRow();
}

QWidget* GivenDialog::buildFound() {
    auto* found = new QWidget(this);
    auto* box = new QVBoxLayout(found);
    box->setContentsMargins(0, 0, 0, 0);
    box->setSpacing(8);
    auto* head = new QHBoxLayout;
    guess_ = new QPushButton("&Guess anew", found);
    guess_->setAutoDefault(false);
    guess_->setToolTip("Forgets the roles, selectors and CSS of the theme that were set by hand");
    QSizePolicy kept = guess_->sizePolicy();
    kept.setRetainSizeWhenHidden(true);
    guess_->setSizePolicy(kept);
    head->addWidget(demiBold(new QLabel("What was found", found)), 1);
    head->addWidget(guess_);
    box->addLayout(head);
    report_ = new QPlainTextEdit(found);
    report_->setReadOnly(true);
    report_->setTabChangesFocus(true);
    report_->setAccessibleName("What was found and guessed");
    box->addWidget(report_, 1);
    connect(guess_, &QPushButton::clicked, reader_, &RowReader::guessAnew);
    return found;
}

QWidget* GivenDialog::buildEmpty() {
    auto* empty = new QWidget(this);
    auto* box = new QVBoxLayout(empty);
    box->setContentsMargins(16, 32, 0, 0);
    box->setSpacing(8);
    box->addWidget(demiBold(paragraph("Nothing pasted yet", empty)));
    auto* how = paragraph(
        "Paste a page’s HTML into the box, or that of its row of cards alone. A saved page can be opened, or "
        "dropped anywhere here; then the style sheets beside it are read too.",
        empty);
    how->setForegroundRole(QPalette::PlaceholderText);
    how->setMaximumWidth(480);
    box->addWidget(how);
    box->addStretch(1);
    return empty;
}

QLayout* GivenDialog::buildFoot() {
    auto* foot = new QHBoxLayout;
    foot->setSpacing(8);
    foot_ = paragraph({}, this);
    foot_->setForegroundRole(QPalette::PlaceholderText);
    auto* cancel = new QPushButton("Cancel", this);
    take_ = new QPushButton("&Take this row", this);
    take_->setToolTip("Ctrl+Enter");
    for (QPushButton* button : {cancel, take_})
        button->setAutoDefault(false);
    foot->addWidget(foot_, 1);
    foot->addWidget(cancel);
    foot->addWidget(take_);
    connect(cancel, &QPushButton::clicked, this, &QDialog::reject);
    connect(take_, &QPushButton::clicked, this, &GivenDialog::take);
    // Enter alone ends what is typed in a field.
    for (const int key : {Qt::Key_Return, Qt::Key_Enter})
        connect(new QShortcut(QKeySequence(Qt::CTRL | static_cast<Qt::Key>(key)), this),
                &QShortcut::activated, this, &GivenDialog::take);
    return foot;
}

void GivenDialog::showEvent(QShowEvent* event) {
    QDialog::showEvent(event);
    page_->focusBox();
    // Other variants, another folder: what was found for the last project need not hold.
    if (reader_->hasPage())
        reader_->readAgain();
    else
        follow();
}

void GivenDialog::follow() {
    const RowReading& reading = reader_->last();
    const bool busy = reader_->isReading();
    const bool has = reading.adopted.has_value() && failed_.isEmpty();
    take_->setEnabled(has && !busy);
    guess_->setVisible(reader_->hasChoices());
    foot_->setText(has ? takenOver(document_.project().cards.size()) : QString());
    if (has || (failed_.isEmpty() && !reader_->hasPage())) {
        stack_->setCurrentWidget(has ? static_cast<QWidget*>(row_) : empty_);
        return;
    }
    if (!failed_.isEmpty())
        noRow_->showFailure(failed_);
    else if (busy)
        noRow_->showReading();
    else
        noRow_->showProblems(reading.problems, reading.refused);
    stack_->setCurrentWidget(noRow_);
}

void GivenDialog::showRow() {
    const RowReading& reading = reader_->last();
    row_->setReading(reading, project::roles(document_.project()), reader_->saidTheme());
    if (reading.row) row_->bar()->tell(problemSentences(reading.refused));
    showReport();
    follow();
}

void GivenDialog::showReport() {
    const RowReading& reading = reader_->last();
    QStringList lines;
    if (reading.adopted) {
        for (const std::string& sentence : reading.adopted->report)
            lines << QString::fromStdString(project::visible(sentence));
        for (const project::Problem& problem : reading.problems)
            lines << problemSentence(problem);
    }
    report_->setPlainText(lines.join('\n'));
}

void GivenDialog::take() {
    if (!take_->isEnabled()) return;
    const project::Project& from = reader_->last().adopted->project;
    const int cards = static_cast<int>(from.cards.size());
    document_.edit("Take a page’s row", [&](project::Project& project) {
        project.given = from.given;
        project.cards = from.cards;
        project.language = from.language;
        project.rightToLeft = from.rightToLeft;
        project.headingLevel = from.headingLevel;
        project.page.rootSize = from.page.rootSize;
        project.page.container = from.page.container;
    });
    accept();
    emit taken(cards);
}

void GivenDialog::dragEnterEvent(QDragEnterEvent* event) {
    if (event->mimeData()->hasUrls()) event->acceptProposedAction();
}

void GivenDialog::dropEvent(QDropEvent* event) {
    for (const QUrl& url : event->mimeData()->urls()) {
        if (!url.isLocalFile()) continue;
        event->acceptProposedAction();
        page_->open(url.toLocalFile());
        return;
    }
}

}  // namespace tenter::desktop::given
