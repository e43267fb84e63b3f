#include "compare/compare_dialog.h"

#include <QFileDialog>
#include <QFileInfo>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QVBoxLayout>
#include <utility>

#include "compare/wording.h"
#include "controls/inks.h"
#include "document/wording.h"

namespace tenter::desktop::compare {

namespace {

constexpr int mostListed = 200;

QLabel* words(const QString& text, QWidget* parent) {
    auto* label = new QLabel(text, parent);
    label->setWordWrap(true);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    return label;
}

}  // namespace

CompareDialog::CompareDialog(Comparison& comparison, Viewing& viewing, QWidget* parent)
    : QDialog(parent), comparison_(comparison), viewing_(viewing) {
    setWindowTitle("Compare with a browser");
    resize(560, 520);
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(24, 24, 24, 16);
    box->setSpacing(16);
    QLabel* about = words(
        "A browser on this machine lays the page out at every width, without a window and off the network; "
        "what "
        "it makes is set against what Tenter computes.",
        this);
    about->setForegroundRole(QPalette::PlaceholderText);
    box->addWidget(about);
    box->addWidget(choice_ = buildChoice());
    box->addWidget(place_ = buildPlace());
    box->addWidget(none_ = words(howToGetOne(), this));
    again_ = new QPushButton("Look again", this);
    box->addWidget(again_, 0, Qt::AlignLeft);
    progress_ = new QProgressBar(this);
    progress_->setTextVisible(false);
    progress_->setFixedHeight(8);
    progress_->setAccessibleName("Widths compared");
    box->addWidget(progress_);
    headline_ = words({}, this);
    QFont bold = headline_->font();
    bold.setWeight(QFont::DemiBold);
    headline_->setFont(bold);
    headline_->setAccessibleName("What came of it");
    box->addWidget(headline_);
    stale_ = words("The row has changed since; compare again.", this);
    box->addWidget(stale_);
    box->addWidget(figures_ = buildFigures());
    listTitle_ = new QLabel("Where it differs; choose a line to go there", this);
    listTitle_->setForegroundRole(QPalette::PlaceholderText);
    box->addWidget(listTitle_);
    list_ = new QListWidget(this);
    list_->setAccessibleName("Where the browser differs");
    list_->setUniformItemSizes(true);
    box->addWidget(list_, 1);
    box->addStretch(0);
    auto* foot = new QHBoxLayout;
    auto* close = new QPushButton("Close", this);
    close->setAutoDefault(false);
    foot->addStretch(1);
    foot->addWidget(close);
    box->addLayout(foot);

    connect(close, &QPushButton::clicked, this, &QDialog::close);
    connect(again_, &QPushButton::clicked, this, &CompareDialog::lookForBrowsers);
    connect(start_, &QPushButton::clicked, this, &CompareDialog::startOrStop);
    connect(list_, &QListWidget::currentRowChanged, this, &CompareDialog::goTo);
    connect(list_, &QListWidget::itemClicked, this,
            [this](QListWidgetItem* item) { goTo(list_->row(item)); });
    connect(&comparison_, &Comparison::changed, this, &CompareDialog::follow);
    connect(&comparison_, &Comparison::failed, this, [this](const QString& why) {
        why_ = why;
        follow();
    });
    follow();
}

QWidget* CompareDialog::buildChoice() {
    auto* choice = new QWidget(this);
    auto* row = new QHBoxLayout(choice);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(8);
    segments_ = new controls::Segments(choice);
    segments_->setAccessibleName("Browser");
    start_ = new QPushButton(choice);
    start_->setDefault(true);
    row->addWidget(segments_);
    row->addStretch(1);
    row->addWidget(start_);
    return choice;
}

QWidget* CompareDialog::buildPlace() {
    auto* place = new QWidget(this);
    auto* row = new QHBoxLayout(place);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(8);
    places_ = new controls::Segments(place);
    places_->setAccessibleName("Where the row stands");
    places_->setTexts({"The row alone", "In a saved page…"},
                      {"The row alone, in the container that the project says",
                       "In a saved copy of the page, within its theme"});
    places_->setCurrent(0);
    saved_ = new QLabel(place);
    saved_->setForegroundRole(QPalette::PlaceholderText);
    saved_->setAccessibleName("The saved page");
    row->addWidget(places_);
    row->addWidget(saved_, 1);
    connect(places_, &controls::Segments::chosen, this, &CompareDialog::choosePlace);
    return place;
}

void CompareDialog::choosePlace(int index) {
    if (index == 0) {
        setSavedPage({});
        return;
    }
    const QString start = savedPage_.isEmpty() ? QString::fromStdString(viewing_.document().folder().string())
                                               : QFileInfo(savedPage_).path();
    const QString file = QFileDialog::getOpenFileName(this, "Open a saved page", start,
                                                      "Pages (*.html *.htm *.xhtml);;All files (*)");
    setSavedPage(file.isEmpty() ? savedPage_ : file);
}

void CompareDialog::setSavedPage(const QString& file) {
    savedPage_ = file;
    places_->setCurrent(file.isEmpty() ? 0 : 1);
    const QString name = QFileInfo(file).fileName();
    saved_->setText(saved_->fontMetrics().elidedText(name, Qt::ElideMiddle, 200));
    saved_->setToolTip(file);
    follow();
}

QWidget* CompareDialog::buildFigures() {
    auto* figures = new QWidget(this);
    auto* form = new QFormLayout(figures);
    form->setContentsMargins(0, 0, 0, 0);
    form->setHorizontalSpacing(32);
    form->setVerticalSpacing(4);
    const auto add = [&](const QString& name, const QString& says) {
        auto* label = new QLabel(name, figures);
        label->setForegroundRole(QPalette::PlaceholderText);
        label->setToolTip(says);
        auto* value = new QLabel(figures);
        value->setTextInteractionFlags(Qt::TextSelectableByMouse);
        value->setAccessibleName(name);
        form->addRow(label, value);
        return value;
    };
    parts_ = add("Parts compared", "Each part at each width counts once");
    differing_ = add("Of them differ",
                     "By more than half a px of a box, a hundredth or two of a px of size, or a line");
    tight_ = add("Tight fits", "Lines so near their box that the browser’s own rounding decides");
    box_ = add("Largest box difference", "The most that any side of any box is off");
    size_ = add("Largest size difference", "The most that any computed font size is off");
    return figures;
}

void CompareDialog::showEvent(QShowEvent* event) {
    QDialog::showEvent(event);
    if (browsers_.empty()) lookForBrowsers();
    follow();
}

void CompareDialog::lookForBrowsers() {
    offer(installedBrowsers());
}

void CompareDialog::offer(std::vector<Browser> browsers) {
    browsers_ = std::move(browsers);
    QStringList titles;
    QStringList names;
    for (const Browser& browser : browsers_) {
        titles << browser.title;
        names << browser.title + ", " + browser.program;
    }
    segments_->setTexts(titles, names);
    if (segments_->current() < 0) segments_->setCurrent(0);
    follow();
}

void CompareDialog::startOrStop() {
    if (comparison_.isRunning()) {
        comparison_.cancel();
        return;
    }
    why_.clear();
    const int chosen = segments_->current();
    if (chosen < 0 || chosen >= static_cast<int>(browsers_.size())) return;
    const bool given = viewing_.shown().given.has_value();
    comparison_.start(browsers_[static_cast<std::size_t>(chosen)], {}, given ? savedPage_ : QString());
}

void CompareDialog::follow() {
    const bool none = browsers_.empty();
    const bool running = comparison_.isRunning();
    none_->setVisible(none);
    again_->setVisible(none);
    choice_->setVisible(!none);
    place_->setVisible(!none && viewing_.shown().given.has_value());
    segments_->setEnabled(!running);
    places_->setEnabled(!running);
    start_->setText(running ? "Stop" : "Compare");
    progress_->setVisible(running);
    progress_->setMaximum(static_cast<int>(comparison_.total()));
    progress_->setValue(static_cast<int>(comparison_.done()));

    QPalette ink = palette();
    if (!why_.isEmpty()) ink.setColor(QPalette::WindowText, controls::caution(ink));
    headline_->setPalette(ink);
    headline_->setText(why_.isEmpty() ? headline(comparison_) : why_);
    headline_->setVisible(!headline_->text().isEmpty());
    const judge::Summary& summary = comparison_.summary();
    const bool any = summary.widths > 0;
    stale_->setVisible(any && !running && !comparison_.isFresh());
    figures_->setVisible(any);
    if (any) {
        const auto whole = [](std::size_t count) { return figure(static_cast<double>(count), 0); };
        parts_->setText(whole(summary.parts) + " at " + whole(summary.widths) + " widths");
        differing_->setText(whole(summary.differingParts));
        tight_->setText(whole(summary.tightFits));
        box_->setText(pixels(summary.largestBox, 3) + ", at " + pixels(summary.largestBoxAt));
        size_->setText(pixels(summary.largestSize, 4));
    }
    const bool differs = !comparison_.runs().empty();
    listTitle_->setVisible(differs);
    list_->setVisible(differs);
    fillList();
}

void CompareDialog::fillList() {
    const QSignalBlocker quiet(list_);
    const auto& runs = comparison_.runs();
    const int shown = std::min(mostListed, static_cast<int>(runs.size()));
    while (list_->count() > shown)
        delete list_->takeItem(list_->count() - 1);
    for (int i = 0; i < shown; ++i) {
        const judge::DifferingRun& run = runs[static_cast<std::size_t>(i)];
        const QString text =
            widthsTitle(run.first, run.last) + "  ·  " + differenceTitle(comparison_, run.worst);
        if (i >= list_->count())
            list_->addItem(text);
        else if (list_->item(i)->text() != text)
            list_->item(i)->setText(text);
    }
}

void CompareDialog::goTo(int index) {
    const auto& runs = comparison_.runs();
    if (index < 0 || index >= static_cast<int>(runs.size())) return;
    const judge::DifferingRun& run = runs[static_cast<std::size_t>(index)];
    viewing_.setWidth(run.first);
    if (run.worst.card && run.worst.part)
        viewing_.select({static_cast<int>(*run.worst.card), static_cast<int>(*run.worst.part)});
}

}  // namespace tenter::desktop::compare
