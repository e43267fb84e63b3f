#include "window/break_choice.h"

#include <QActionGroup>
#include <QSettings>
#include <algorithm>

#include "document/wording.h"
#include "session/changes.h"

namespace tenter::desktop::window {

namespace {

const QString engineKey = "engine";

/// `title` with & before its first letter that is not in `taken`; adds that letter to `taken`.
QString withMnemonic(QString title, QString& taken) {
    for (qsizetype i = 0; i < title.size(); ++i) {
        const QChar letter = title[i].toLower();
        if (!letter.isLetter() || taken.contains(letter)) continue;
        taken += letter;
        return title.insert(i, '&');
    }
    return title;
}

}  // namespace

BreakChoice::BreakChoice(ViewState& view, QObject* parent) : QObject(parent), view_(view) {
    auto* group = new QActionGroup(this);
    // Mnemonics of the other entries of the menu. A translation has its own.
    QString letters = QObject::tr("afvolszbhp", "letters after & in the View menu");
    for (const text::BreakProfile* profile : text::profiles()) {
        auto* action = new QAction(
            QObject::tr("Line breaks as in %1").arg(withMnemonic(engineTitle(*profile), letters)), this);
        action->setCheckable(true);
        const auto index = static_cast<int>(actions_.size());
        connect(action, &QAction::triggered, this, [this, index] { choose(index); });
        group->addAction(action);
        actions_ << action;
    }
    onChange(view_, ViewState::Change::BreakProfile, this, &BreakChoice::show);
    if (const auto* kept = text::profile(QSettings().value(engineKey).toString().toStdString()))
        view_.setProfile(*kept);
    show();
}

int BreakChoice::current() const {
    const auto found = std::ranges::find(text::profiles(), &view_.profile());
    return static_cast<int>(found - text::profiles().begin());
}

void BreakChoice::choose(int index) {
    const text::BreakProfile& profile = *text::profiles()[static_cast<std::size_t>(index)];
    view_.setProfile(profile);
    QSettings().setValue(
        engineKey, QString::fromUtf8(profile.name().data(), static_cast<qsizetype>(profile.name().size())));
}

void BreakChoice::show() {
    actions_[current()]->setChecked(true);
    Q_EMIT changed();
}

}  // namespace tenter::desktop::window
