#include "page_import/import_dialog.h"

#include <QDragEnterEvent>
#include <QMimeData>
#include <QSplitter>
#include <QStyledItemDelegate>
#include <QVBoxLayout>

#include "controls/dialog_foot.h"
#include "controls/inks.h"
#include "controls/number_editors.h"
#include "controls/text_scale.h"
#include "document/refusal.h"
#include "document/wording.h"
#include "page_import/wording.h"
#include "project/utf8.h"
#include "project/wording.h"

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

/// Items as high as their whole text: the default height loses the end of some.
class WholeText : public QStyledItemDelegate {
public:
    using QStyledItemDelegate::QStyledItemDelegate;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option,
                                 const QModelIndex& index) const override {
        const auto* view = qobject_cast<const QListView*>(option.widget);
        if (view == nullptr) return QStyledItemDelegate::sizeHint(option, index);
        // The room that the style leaves for the text, less what its lines may be wider than measured here.
        const int margin = view->style()->pixelMetric(QStyle::PM_FocusFrameHMargin, &option, view) + 1;
        constexpr int leeway = 2;
        const int width = view->viewport()->width() - 2 * (view->spacing() + margin) - leeway;
        const QRect text = QFontMetrics(option.font)
                               .boundingRect(QRect(0, 0, width, 9999), Qt::TextWordWrap,
                                             index.data(Qt::DisplayRole).toString());
        return {width, text.height() + option.fontMetrics.leading() + 8};
    }
};

/// What the import replaces in a project with so many cards.
QString replaceTitle(std::size_t cards) {
    if (cards == 0) return QObject::tr("&This project, which has no cards");
    return cards == 1 ? QObject::tr("&This project: replace its card and its text")
                      : QObject::tr("&This project: replace its %n card(s) and their text", nullptr,
                                    static_cast<int>(cards));
}

/// What the import of a new project makes.
QString newProjectTitle(const ImportResult& result) {
    if (result.isSheet)
        return QObject::tr("Makes a new project with the settings of the stylesheet and placeholder texts.");
    if (result.isOwn)
        return QObject::tr("Tenter wrote this page. Makes a new project with its cards and all settings.");
    return QObject::tr(
        "Makes a new project with the columns, breakpoints, sizes, spacing and colours of the "
        "page. The list says what a project cannot hold.");
}

}  // namespace

ImportDialog::ImportDialog(Document& document, QWidget* parent)
    : QDialog(parent),
      document_(document),
      reader_(new RowReader(document, this)),
      page_(new PageInput(this)),
      notice_(new NoRowNotice),
      row_(new RowReview),
      found_(new FoundTable),
      measure_(new MeasureSwitch(*reader_, this)),
      read_(new QTabWidget),
      stack_(new QStackedWidget(this)) {
    setWindowTitle(QObject::tr("Import row from page"));
    setWindowModality(Qt::WindowModal);
    setAcceptDrops(true);
    resize(1120, 680);
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(24, 24, 24, 16);
    box->setSpacing(16);
    auto* about = paragraph(
        QObject::tr(
            "For a row of cards that is already on a page. Tenter leaves its HTML unchanged and writes a "
            "stylesheet for it. Tenter runs no scripts of the page and loads nothing from the network."),
        this);
    about->setForegroundRole(QPalette::PlaceholderText);
    box->addWidget(about);
    auto* left = new QWidget(this);
    auto* leftBox = new QVBoxLayout(left);
    leftBox->setContentsMargins(0, 0, 8, 0);
    leftBox->setSpacing(16);
    leftBox->addWidget(page_, 1);
    leftBox->addWidget(root_ = buildRoot());
    leftBox->addWidget(measure_);
    leftBox->addWidget(buildFound(), 1);
    stack_->addWidget(empty_ = buildEmpty());
    stack_->addWidget(notice_);
    read_->setDocumentMode(true);
    read_->setAccessibleName(QObject::tr("Result"));
    read_->addTab(row_, QObject::tr("Elements"));
    read_->addTab(found_, QObject::tr("Declarations"));
    stack_->addWidget(read_);
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

QWidget* ImportDialog::buildRoot() {
    auto* root = new QWidget(this);
    auto* box = new QHBoxLayout(root);
    box->setContentsMargins(0, 0, 0, 0);
    box->setSpacing(8);
    auto* field = new controls::NumberField(controls::lengthKind({"px"}, {}, 1, 100), root);
    field->setAccessibleName(QObject::tr("Theme root size"));
    field->setAlwaysFilled(true);
    field->setAmount({16, "px"});
    field->setFixedWidth(controls::scaled(72));
    field->setToolTip(toolTipText(QObject::tr(
        "What 1 rem is on the page. A stylesheet alone does not say it, unless it has a rule for html.")));
    auto* label = new QLabel(QObject::tr("Theme root size"), root);
    label->setBuddy(field);
    box->addWidget(label);
    box->addWidget(field);
    box->addStretch(1);
    connect(field, &controls::NumberField::amountEdited, this,
            [this, field] { reader_->setRootSize(field->amount().value); });
    root->hide();
    return root;
}

QWidget* ImportDialog::buildFound() {
    auto* found = new QWidget(this);
    auto* box = new QVBoxLayout(found);
    box->setContentsMargins(0, 0, 0, 0);
    box->setSpacing(8);
    auto* head = new QHBoxLayout;
    guess_ = new QPushButton(QObject::tr("&Guess again"), found);
    guess_->setAutoDefault(false);
    guess_->setToolTip(
        QObject::tr("Discard the roles, selectors and theme CSS that you set, and guess them again"));
    QSizePolicy kept = guess_->sizePolicy();
    kept.setRetainSizeWhenHidden(true);
    guess_->setSizePolicy(kept);
    head->addWidget(demiBold(new QLabel(QObject::tr("Import report"), found)), 1);
    head->addWidget(guess_);
    box->addLayout(head);
    report_ = new QListWidget(found);
    report_->setWordWrap(true);
    report_->setItemDelegate(new WholeText(report_));
    report_->setTextElideMode(Qt::ElideNone);
    report_->setSpacing(2);
    report_->setResizeMode(QListView::Adjust);
    report_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    report_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    report_->setSelectionMode(QAbstractItemView::SingleSelection);
    report_->setAccessibleName(QObject::tr("Import report"));
    box->addWidget(report_, 1);
    connect(guess_, &QPushButton::clicked, reader_, &RowReader::guessAgain);
    return found;
}

QWidget* ImportDialog::buildEmpty() {
    auto* empty = new QWidget(this);
    auto* box = new QVBoxLayout(empty);
    box->setContentsMargins(16, 32, 0, 0);
    box->setSpacing(8);
    box->addWidget(demiBold(paragraph(QObject::tr("No page yet"), empty)));
    auto* how = paragraph(
        QObject::tr(
            "Paste the HTML of a page, or only of its row of cards, or a stylesheet, into the box on the "
            "left.\n\n"
            "Or open a saved page, or drop one on this window. Then Tenter also reads the "
            "stylesheets that were "
            "saved with it."),
        empty);
    how->setForegroundRole(QPalette::PlaceholderText);
    how->setMaximumWidth(480);
    box->addWidget(how);
    box->addStretch(1);
    return empty;
}

QLayout* ImportDialog::buildFoot() {
    const controls::DialogFoot foot =
        controls::dialogFoot(this, QObject::tr("&Import row"), QObject::tr("Import this row (Ctrl+Enter)"),
                             [this] { importRow(); });
    consequence_ = foot.hint;
    import_ = foot.action;
    destination_ = new QWidget(this);
    auto* choice = new QHBoxLayout(destination_);
    choice->setContentsMargins(0, 0, 0, 0);
    choice->setSpacing(16);
    intoThis_ = new QRadioButton(destination_);
    intoNew_ = new QRadioButton(QObject::tr("A &new project"), destination_);
    intoThis_->setChecked(true);
    choice->addWidget(new QLabel(QObject::tr("Import into:"), destination_));
    choice->addWidget(intoThis_);
    choice->addWidget(intoNew_);
    foot.layout->insertWidget(0, destination_);
    connect(intoNew_, &QRadioButton::toggled, this,
            [this](bool on) { reader_->setIntoNew(on || !document_.hasProject()); });
    return foot.layout;
}

void ImportDialog::showEvent(QShowEvent* event) {
    QDialog::showEvent(event);
    page_->focusBox();
    destination_->setVisible(document_.hasProject());
    intoThis_->setText(replaceTitle(document_.project().row().cards.size()));
    reader_->setIntoNew(intoNew_->isChecked() || !document_.hasProject());
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
    consequence_->setText(!has                   ? QString()
                          : reader_->isIntoNew() ? newProjectTitle(result)
                                                 : QObject::tr("You can undo the import."));
    root_->setVisible(result.isSheet);
    measure_->setVisible(!result.isSheet);
    if (has || (failed_.isEmpty() && !reader_->hasPage())) {
        stack_->setCurrentWidget(has ? static_cast<QWidget*>(read_) : empty_);
        return;
    }
    if (!failed_.isEmpty())
        notice_->showFailure(failed_);
    else if (busy)
        notice_->showReading();
    else
        notice_->showProblems(result.problems, result.refused, result.isSheet);
    stack_->setCurrentWidget(notice_);
}

void ImportDialog::showRow() {
    const ImportResult& result = reader_->result();
    const project::Project& project = result.adopted ? result.adopted->project : document_.project();
    row_->setResult(result, project::roles(project), reader_->typedTheme());
    if (result.row) row_->bar()->showProblem(problemSentences(result.refused));
    found_->setFound(result.found, project.leastWidth, project.mostWidth);
    // What Tenter wrote has no elements to assign, and a stylesheet has none at all.
    const bool hasRow = !result.isSheet && !result.isOwn;
    read_->setTabVisible(0, hasRow);
    read_->setTabVisible(1, !result.found.empty());
    read_->tabBar()->setVisible(!result.found.empty() && hasRow);
    showReport();
    updateState();
}

void ImportDialog::showReport() {
    const ImportResult& result = reader_->result();
    report_->clear();
    if (!result.adopted) return;
    // What to check comes first.
    const auto add = [this](const QString& sentence, bool isCaution) {
        auto* item = new QListWidgetItem(sentence, report_);
        if (isCaution) item->setForeground(controls::caution(palette()));
    };
    for (const project::Problem& problem : result.problems)
        add(problemSentence(problem), true);
    for (const std::string& sentence : result.adopted->report)
        add(QString::fromStdString(project::visible(sentence)), project::isWarning(sentence));
}

void ImportDialog::importRow() {
    if (!import_->isEnabled()) return;
    const project::Project& from = reader_->result().adopted->project;
    const int cards = static_cast<int>(from.row().cards.size());
    if (reader_->isIntoNew()) {
        const project::Project made = from;
        const std::filesystem::path folder = reader_->folderOfNew();
        accept();
        Q_EMIT importedAsNew(
            made, folder,
            reader_->result().isSheet
                ? QObject::tr("New project with the settings of the stylesheet. Save it to keep it.")
                : QObject::tr("New project with the row of the page: %n card(s). Save it to keep it.",
                              nullptr, static_cast<int>(cards)));
        return;
    }
    const project::Problems problems =
        document_.edit(QObject::tr("Import row from page"), [&](project::Project& project) {
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

void ImportDialog::openPage(const QString& file) {
    page_->open(file);
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
