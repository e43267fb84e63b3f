#include "page_import/import_dialog.h"

#include <QDragEnterEvent>
#include <QMimeData>
#include <QShortcut>
#include <QSplitter>
#include <QVBoxLayout>

#include "document/refusal.h"
#include "page_import/wording.h"
#include "project/utf8.h"

namespace tenter::desktop::page_import {

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

/// What the import changes in a project with so many cards.
QString consequenceTitle(std::size_t cards) {
    if (cards == 0) return "You can undo the import.";
    return (cards == 1 ? QString("Replaces the card of this project and its text.")
                       : QString("Replaces the %1 cards of this project and their text.").arg(cards)) +
           " You can undo the import.";
}

}  // namespace

ImportDialog::ImportDialog(Document& document, QWidget* parent)
    : QDialog(parent),
      document_(document),
      reader_(new RowReader(document, this)),
      page_(new PageInput(this)),
      notice_(new NoRowNotice),
      row_(new RowReview),
      stack_(new QStackedWidget(this)) {
    setWindowTitle("Import row from page");
    setWindowModality(Qt::WindowModal);
    setAcceptDrops(true);
    resize(1120, 680);
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(24, 24, 24, 16);
    box->setSpacing(16);
    auto* about = paragraph(
        "For a row of cards that is already on a page. Tenter leaves its HTML unchanged and writes a "
        "stylesheet for it. Tenter runs no scripts of the page and loads nothing from the network.",
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
    stack_->addWidget(notice_);
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

    connect(page_, &PageInput::pageChanged, this,
            [this](const QByteArray& bytes, const QString& file, bool atOnce) {
                failed_.clear();
                reader_->setPage(bytes, file.toStdString(), atOnce);
            });
    connect(page_, &PageInput::failed, this, [this](const QString& why) {
        failed_ = why;
        updateState();
    });
    connect(notice_, &NoRowNotice::cardSelectorEntered, this, [this](const QString& selector) {
        reader_->setSelector({"card", selector.toStdString()});
    });
    connect(row_->bar(), &RoleBar::roleChosen, this, [this](quint32 node, const QString& role) {
        reader_->assignRole({node, role.toStdString()});
    });
    connect(row_->bar(), &RoleBar::selectorTyped, this, [this](const QString& role, const QString& selector) {
        reader_->setSelector({role.toStdString(), selector.toStdString()});
    });
    connect(row_, &RowReview::themeTyped, this,
            [this](const QString& css) { reader_->setTheme(css.toStdString()); });
    connect(reader_, &RowReader::started, this, &ImportDialog::updateState);
    connect(reader_, &RowReader::finished, this, &ImportDialog::showRow);
    showRow();
}

QWidget* ImportDialog::buildFound() {
    auto* found = new QWidget(this);
    auto* box = new QVBoxLayout(found);
    box->setContentsMargins(0, 0, 0, 0);
    box->setSpacing(8);
    auto* head = new QHBoxLayout;
    guess_ = new QPushButton("&Guess again", found);
    guess_->setAutoDefault(false);
    guess_->setToolTip("Discard the roles, selectors and theme CSS that you set, and guess them again");
    QSizePolicy kept = guess_->sizePolicy();
    kept.setRetainSizeWhenHidden(true);
    guess_->setSizePolicy(kept);
    head->addWidget(demiBold(new QLabel("Import report", found)), 1);
    head->addWidget(guess_);
    box->addLayout(head);
    report_ = new QPlainTextEdit(found);
    report_->setReadOnly(true);
    report_->setTabChangesFocus(true);
    report_->setAccessibleName("Import report");
    report_->setPlaceholderText("Lists what Tenter finds on the page");
    box->addWidget(report_, 1);
    connect(guess_, &QPushButton::clicked, reader_, &RowReader::guessAgain);
    return found;
}

QWidget* ImportDialog::buildEmpty() {
    auto* empty = new QWidget(this);
    auto* box = new QVBoxLayout(empty);
    box->setContentsMargins(16, 32, 0, 0);
    box->setSpacing(8);
    box->addWidget(demiBold(paragraph("No page yet", empty)));
    auto* how = paragraph(
        "Paste the HTML of a page, or only of its row of cards, into the box on the left.\n\n"
        "Or open a saved page, or drop one on this window. Then Tenter also reads the stylesheets that were "
        "saved with it.",
        empty);
    how->setForegroundRole(QPalette::PlaceholderText);
    how->setMaximumWidth(480);
    box->addWidget(how);
    box->addStretch(1);
    return empty;
}

QLayout* ImportDialog::buildFoot() {
    auto* foot = new QHBoxLayout;
    foot->setSpacing(8);
    consequence_ = paragraph({}, this);
    consequence_->setForegroundRole(QPalette::PlaceholderText);
    auto* cancel = new QPushButton("Cancel", this);
    import_ = new QPushButton("&Import row", this);
    import_->setToolTip("Import this row into the project (Ctrl+Enter)");
    for (QPushButton* button : {cancel, import_})
        button->setAutoDefault(false);
    foot->addWidget(consequence_, 1);
    foot->addWidget(cancel);
    foot->addWidget(import_);
    connect(cancel, &QPushButton::clicked, this, &QDialog::reject);
    connect(import_, &QPushButton::clicked, this, &ImportDialog::importRow);
    // Ctrl+Enter, because Enter alone confirms the text in a field.
    for (const int key : {Qt::Key_Return, Qt::Key_Enter})
        connect(new QShortcut(QKeySequence(Qt::CTRL | static_cast<Qt::Key>(key)), this),
                &QShortcut::activated, this, &ImportDialog::importRow);
    return foot;
}

void ImportDialog::showEvent(QShowEvent* event) {
    QDialog::showEvent(event);
    page_->focusBox();
    // The project may have changed since the dialog was last open, so read the page again.
    if (reader_->hasPage())
        reader_->readAgain();
    else
        updateState();
}

void ImportDialog::updateState() {
    const ImportResult& result = reader_->result();
    const bool busy = reader_->isReading();
    const bool has = result.adopted.has_value() && failed_.isEmpty();
    import_->setEnabled(has && !busy);
    guess_->setVisible(reader_->hasChoices());
    consequence_->setText(has ? consequenceTitle(document_.project().row().cards.size()) : QString());
    if (has || (failed_.isEmpty() && !reader_->hasPage())) {
        stack_->setCurrentWidget(has ? static_cast<QWidget*>(row_) : empty_);
        return;
    }
    if (!failed_.isEmpty())
        notice_->showFailure(failed_);
    else if (busy)
        notice_->showReading();
    else
        notice_->showProblems(result.problems, result.refused);
    stack_->setCurrentWidget(notice_);
}

void ImportDialog::showRow() {
    const ImportResult& result = reader_->result();
    row_->setResult(result, project::roles(document_.project()), reader_->typedTheme());
    if (result.row) row_->bar()->showProblem(problemSentences(result.refused));
    showReport();
    updateState();
}

void ImportDialog::showReport() {
    const ImportResult& result = reader_->result();
    QStringList lines;
    if (result.adopted) {
        for (const std::string& sentence : result.adopted->report)
            lines << QString::fromStdString(project::visible(sentence));
        for (const project::Problem& problem : result.problems)
            lines << problemSentence(problem);
    }
    report_->setPlainText(lines.join('\n'));
}

void ImportDialog::importRow() {
    if (!import_->isEnabled()) return;
    const project::Project& from = reader_->result().adopted->project;
    const int cards = static_cast<int>(from.row().cards.size());
    const project::Problems problems = document_.edit("Import row from page", [&](project::Project& project) {
        project.row().given = from.row().given;
        project.row().cards = from.row().cards;
        project.language = from.language;
        project.rightToLeft = from.rightToLeft;
        project.row().headingLevel = from.row().headingLevel;
        project.page.rootSize = from.page.rootSize;
        project.page.container = from.page.container;
        project.page.ranges = from.page.ranges;
    });
    if (!problems.empty()) {
        row_->bar()->showProblem(refusal(document_.project(), problems.front()));
        return;
    }
    accept();
    Q_EMIT imported(cards);
}

void ImportDialog::dragEnterEvent(QDragEnterEvent* event) {
    if (event->mimeData()->hasUrls()) event->acceptProposedAction();
}

void ImportDialog::dropEvent(QDropEvent* event) {
    for (const QUrl& url : event->mimeData()->urls()) {
        if (!url.isLocalFile()) continue;
        event->acceptProposedAction();
        page_->open(url.toLocalFile());
        return;
    }
}

}  // namespace tenter::desktop::page_import
