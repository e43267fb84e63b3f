#include "window/status_facts.h"

#include "controls/inks.h"
#include "document/wording.h"
#include "session/changes.h"

namespace tenter::desktop::window {

StatusFacts::StatusFacts(Session& session, QStatusBar& bar) : QObject(&bar), session_(session) {
    fontNotes_ = new QLabel(&bar);
    fontNotes_->setAccessibleName(QObject::tr("Font problems"));
    QPalette ink = fontNotes_->palette();
    ink.setColor(QPalette::WindowText, controls::caution(ink));
    fontNotes_->setPalette(ink);
    givenNote_ = new QLabel(QObject::tr("Row imported from a page"), &bar);
    givenNote_->setForegroundRole(QPalette::PlaceholderText);
    givenNote_->setAccessibleName(QObject::tr("Markup of the row"));
    givenNote_->setToolTip(QObject::tr(
        "The stylesheet is for the markup of the imported page. For a stylesheet with Tenter’s own markup, "
        "choose Edit › Use Tenter’s markup."));
    trialNote_ = new QPushButton(QObject::tr("Text test"), &bar);
    trialNote_->setFlat(true);
    trialNote_->setToolTip(QObject::tr("End this text test"));
    trialNote_->hide();
    connect(trialNote_, &QPushButton::clicked, this, [this] { session_.shown.tryOut(std::nullopt); });
    onChange(session_.shown, ShownProject::Change::TextTest, this, &StatusFacts::showTrial);
    fontNotes_->setContentsMargins(0, 0, 12, 0);
    givenNote_->setContentsMargins(0, 0, 12, 0);
    bar.addPermanentWidget(trialNote_);
    bar.addPermanentWidget(givenNote_);
    bar.addPermanentWidget(fontNotes_);
    onChange(session_.layouts, LayoutCache::Change::Row, this, &StatusFacts::showFonts);
    onChange(session_.layouts, LayoutCache::Change::Row, this, &StatusFacts::showGiven);
    showGiven();
}

void StatusFacts::showFonts() {
    if (!session_.document.hasProject()) return;
    QStringList notes;
    for (const text::FontNote& note : session_.layouts.row().notes())
        notes << QString::fromStdString(note.says);
    fontNotes_->setText(notes.isEmpty() ? QString()
                        : notes.size() == 1
                            ? notes.first()
                            : QObject::tr("%n font problem(s)", nullptr, static_cast<int>(notes.size())));
    fontNotes_->setToolTip(notes.join('\n'));
}

void StatusFacts::showGiven() {
    givenNote_->setVisible(session_.document.hasProject() &&
                           session_.shown.project().row().given.has_value());
}

void StatusFacts::showTrial() {
    const auto& trial = session_.shown.trial();
    trialNote_->setVisible(trial.has_value());
    if (trial) trialNote_->setText(QObject::tr("Text test: %1").arg(trialTitle(trial->kind)) + "  ×");
}

}  // namespace tenter::desktop::window
