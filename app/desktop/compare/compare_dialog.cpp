#include "compare/compare_dialog.h"

#include <QFileDialog>
#include <QFileInfo>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QVBoxLayout>
#include <utility>

#include "compare/wording.h"
#include "controls/glossary.h"
#include "controls/inks.h"
#include "controls/selectable_label.h"
#include "document/wording.h"

namespace tenter::desktop::compare {

namespace {

constexpr int mostListed = 200;

}  // namespace

CompareDialog::CompareDialog(Comparison& comparison, Session& session, QWidget* parent)
    : QDialog(parent), comparison_(comparison), session_(session) {
    setWindowTitle(QObject::tr("Compare with browser"));
    resize(560, 520);
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(24, 24, 24, 16);
    box->setSpacing(16);
    QLabel* about =
        controls::selectableLabel(QObject::tr("A browser on this computer lays out the row at every width, "
                                              "in the background and without network "
                                              "access. Tenter compares the result with its own layout."),
                                  this);
    about->setForegroundRole(QPalette::PlaceholderText);
    box->addWidget(about);
    box->addWidget(choice_ = buildChoice());
    box->addWidget(place_ = buildPlace());
    box->addWidget(none_ = controls::selectableLabel(noBrowserText(), this));
    again_ = new QPushButton(QObject::tr("Search again"), this);
    box->addWidget(again_, 0, Qt::AlignLeft);
    progress_ = new QProgressBar(this);
    progress_->setTextVisible(false);
    progress_->setFixedHeight(8);
    progress_->setAccessibleName(QObject::tr("Widths compared"));
    box->addWidget(progress_);
    headline_ = controls::selectableLabel({}, this);
    QFont bold = headline_->font();
    bold.setWeight(QFont::DemiBold);
    headline_->setFont(bold);
    headline_->setAccessibleName(QObject::tr("Result"));
    box->addWidget(headline_);
    stale_ = controls::selectableLabel(
        QObject::tr("The row has changed since this comparison. Compare again."), this);
    box->addWidget(stale_);
    box->addWidget(figures_ = buildFigures());
    listTitle_ = new QLabel(QObject::tr("Differences from Tenter (select one to show it in the row)"), this);
    listTitle_->setForegroundRole(QPalette::PlaceholderText);
    box->addWidget(listTitle_);
    list_ = new QListWidget(this);
    list_->setAccessibleName(QObject::tr("Differences from Tenter"));
    list_->setUniformItemSizes(true);
    box->addWidget(list_, 1);
    box->addStretch(0);
    auto* foot = new QHBoxLayout;
    auto* close = new QPushButton(QObject::tr("Close"), this);
    close->setAutoDefault(false);
    foot->addStretch(1);
    foot->addWidget(close);
    box->addLayout(foot);

    connect(close, &QPushButton::clicked, this, &QDialog::close);
    connect(again_, &QPushButton::clicked, this, &CompareDialog::findBrowsers);
    connect(start_, &QPushButton::clicked, this, &CompareDialog::startOrStop);
    connect(list_, &QListWidget::currentRowChanged, this, &CompareDialog::goTo);
    connect(list_, &QListWidget::itemClicked, this,
            [this](QListWidgetItem* item) { goTo(list_->row(item)); });
    connect(&comparison_, &Comparison::changed, this, &CompareDialog::updateState);
    connect(&comparison_, &Comparison::failed, this, [this](const QString& why) {
        failure_ = why;
        updateState();
    });
    updateState();
}

QWidget* CompareDialog::buildChoice() {
    auto* choice = new QWidget(this);
    auto* row = new QHBoxLayout(choice);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(8);
    segments_ = new controls::Segments(choice);
    segments_->setAccessibleName(QObject::tr("Browser"));
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
    places_->setAccessibleName(QObject::tr("Page for the comparison"));
    places_->setTexts({QObject::tr("Row only"), QObject::tr("In saved page…")},
                      {QObject::tr("The row on an empty page, in the container set in this project"),
                       QObject::tr("The row in a saved copy of its page, with the theme CSS")});
    places_->setCurrent(0);
    saved_ = new QLabel(place);
    saved_->setForegroundRole(QPalette::PlaceholderText);
    saved_->setAccessibleName(QObject::tr("Saved page"));
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
    const QString start = savedPage_.isEmpty() ? QString::fromStdString(session_.document.folder().string())
                                               : QFileInfo(savedPage_).path();
    const QString file =
        QFileDialog::getOpenFileName(this, QObject::tr("Open saved page"), start,
                                     QObject::tr("Pages (*.html *.htm *.xhtml);;All files (*)"));
    setSavedPage(file.isEmpty() ? savedPage_ : file);
}

void CompareDialog::setSavedPage(const QString& file) {
    savedPage_ = file;
    places_->setCurrent(file.isEmpty() ? 0 : 1);
    const QString name = QFileInfo(file).fileName();
    saved_->setText(saved_->fontMetrics().elidedText(name, Qt::ElideMiddle, 200));
    saved_->setToolTip(file);
    updateState();
}

QWidget* CompareDialog::buildFigures() {
    auto* figures = new QWidget(this);
    auto* form = new QFormLayout(figures);
    form->setContentsMargins(0, 0, 0, 0);
    form->setHorizontalSpacing(32);
    form->setVerticalSpacing(4);
    const auto add = [&](const QString& name, const QString& explanation) {
        auto* label = new QLabel(name, figures);
        label->setForegroundRole(QPalette::PlaceholderText);
        label->setToolTip(toolTipText(explanation));
        auto* value = new QLabel(figures);
        value->setTextInteractionFlags(Qt::TextSelectableByMouse);
        value->setAccessibleName(name);
        form->addRow(label, value);
        return value;
    };
    parts_ = add(QObject::tr("Parts compared"), QObject::tr("Each part counts once at each width."));
    differing_ =
        add(QObject::tr("Parts that differ"),
            QObject::tr(
                "A part differs if its line count differs, if its box differs by more than 0.5\u00A0px, or "
                "if its font size differs by more than 0.01\u00A0px (0.02\u00A0px in Firefox)."));
    tight_ = add(
        QObject::tr("Tight fits with other line counts"),
        QObject::tr(glossary::tightFit) + ".\n" + QObject::tr("They are not counted as parts that differ."));
    box_ = add(QObject::tr("Largest box difference"),
               QObject::tr("The largest difference of a position, width or height, and where it occurs."));
    size_ = add(QObject::tr("Largest font size difference"),
                QObject::tr("The largest difference between the font sizes of a part."));
    return figures;
}

void CompareDialog::showEvent(QShowEvent* event) {
    QDialog::showEvent(event);
    if (browsers_.empty()) findBrowsers();
    updateState();
}

void CompareDialog::findBrowsers() {
    setBrowsers(installedBrowsers());
}

void CompareDialog::setBrowsers(std::vector<Browser> browsers) {
    browsers_ = std::move(browsers);
    QStringList titles;
    QStringList names;
    for (const Browser& browser : browsers_) {
        titles << browser.title;
        names << browser.title + ", " + browser.program;
    }
    segments_->setTexts(titles, names);
    if (segments_->current() < 0) segments_->setCurrent(0);
    updateState();
}

void CompareDialog::startOrStop() {
    if (comparison_.isRunning()) {
        comparison_.cancel();
        return;
    }
    failure_.clear();
    const int chosen = segments_->current();
    if (chosen < 0 || chosen >= static_cast<int>(browsers_.size())) return;
    const bool given = session_.shown.project().row().given.has_value();
    comparison_.start(browsers_[static_cast<std::size_t>(chosen)], {}, given ? savedPage_ : QString());
}

void CompareDialog::updateState() {
    const bool none = browsers_.empty();
    const bool running = comparison_.isRunning();
    none_->setVisible(none);
    again_->setVisible(none);
    choice_->setVisible(!none);
    place_->setVisible(!none && session_.shown.project().row().given.has_value());
    segments_->setEnabled(!running);
    places_->setEnabled(!running);
    start_->setText(running ? QObject::tr("Stop") : QObject::tr("Compare"));
    progress_->setVisible(running);
    progress_->setMaximum(static_cast<int>(comparison_.total()));
    progress_->setValue(static_cast<int>(comparison_.done()));

    QPalette ink = palette();
    if (!failure_.isEmpty()) ink.setColor(QPalette::WindowText, controls::caution(ink));
    headline_->setPalette(ink);
    headline_->setText(failure_.isEmpty() ? headline(comparison_) : failure_);
    headline_->setVisible(!headline_->text().isEmpty());
    const judge::Summary& summary = comparison_.summary();
    const bool any = summary.widths > 0;
    stale_->setVisible(any && !running && !comparison_.isFresh());
    figures_->setVisible(any);
    if (any) {
        const auto whole = [](std::size_t count) { return figure(static_cast<double>(count), 0); };
        parts_->setText(QObject::tr("%1 at %n width(s)", "number of parts", static_cast<int>(summary.widths))
                            .arg(whole(summary.parts)));
        differing_->setText(whole(summary.differingParts));
        tight_->setText(whole(summary.tightFits));
        box_->setText(summary.largestBox > 0
                          ? QObject::tr("%1 at viewport width %2")
                                .arg(smallPixels(summary.largestBox), pixels(summary.largestBoxAt))
                          : smallPixels(0));
        size_->setText(smallPixels(summary.largestSize));
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
    session_.view.setWidth(run.first);
    if (run.worst.card && run.worst.part) session_.selection.select(Place{*run.worst.card, *run.worst.part});
}

}  // namespace tenter::desktop::compare
