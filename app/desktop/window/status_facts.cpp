#include "window/status_facts.h"

#include "controls/inks.h"
#include "document/wording.h"

namespace tenter::desktop::window {

StatusFacts::StatusFacts(Viewing& viewing, QStatusBar& bar) : QObject(&bar), viewing_(viewing) {
    fontNotes_ = new QLabel(&bar);
    fontNotes_->setAccessibleName("Font problems");
    QPalette ink = fontNotes_->palette();
    ink.setColor(QPalette::WindowText, controls::caution(ink));
    fontNotes_->setPalette(ink);
    givenNote_ = new QLabel("Row imported from a page", &bar);
    givenNote_->setForegroundRole(QPalette::PlaceholderText);
    givenNote_->setAccessibleName("Markup of the row");
    givenNote_->setToolTip(
        "The stylesheet is for the markup of the imported page. For a stylesheet with Tenter’s own markup, "
        "choose Edit › Use Tenter’s markup.");
    trialNote_ = new QPushButton(&bar);
    trialNote_->setFlat(true);
    trialNote_->setToolTip("End this text test");
    trialNote_->hide();
    connect(trialNote_, &QPushButton::clicked, this, [this] { viewing_.tryOut(std::nullopt); });
    connect(&viewing_, &Viewing::trialChanged, this, &StatusFacts::showTrial);
    bar.addPermanentWidget(trialNote_);
    bar.addPermanentWidget(givenNote_);
    bar.addPermanentWidget(fontNotes_);
    connect(&viewing_, &Viewing::rowChanged, this, &StatusFacts::showFonts);
    connect(&viewing_, &Viewing::rowChanged, this, &StatusFacts::showGiven);
    connect(&viewing_.document(), &Document::opened, this, &StatusFacts::showGiven);
    showGiven();
}

void StatusFacts::showFonts() {
    if (!viewing_.document().hasProject()) return;
    QStringList notes;
    for (const text::FontNote& note : viewing_.row().notes())
        notes << QString::fromStdString(note.family) + " " + QString::fromStdString(note.says);
    fontNotes_->setText(notes.isEmpty()     ? QString()
                        : notes.size() == 1 ? notes.first()
                                            : QString("%1 font problems").arg(notes.size()));
    fontNotes_->setToolTip(notes.join('\n'));
}

void StatusFacts::showGiven() {
    givenNote_->setVisible(viewing_.document().hasProject() && viewing_.shown().row().given.has_value());
}

void StatusFacts::showTrial() {
    const auto& trial = viewing_.trial();
    trialNote_->setVisible(trial.has_value());
    if (trial) trialNote_->setText("Text test: " + trialTitle(trial->kind) + "  ×");
}

}  // namespace tenter::desktop::window
