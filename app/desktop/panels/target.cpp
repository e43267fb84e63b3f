#include "panels/target.h"

#include <variant>

#include "document/refusal.h"

namespace tenter::desktop::panels {

Target::Target(Viewing& viewing, QObject* parent) : QObject(parent), viewing_(viewing) {
    connect(&viewing_, &Viewing::selectionChanged, this, &Target::follow);
}

bool Target::isText() const {
    return subject_ != "card" && subject_ != "picture" && subject_ != "row";
}

void Target::set(const std::string& subject) {
    if (subject == subject_) return;
    subject_ = subject;
    if (isText()) viewing_.selectRole(subject);
    Q_EMIT changed();
}

void Target::follow() {
    const Viewing::Selection selection = viewing_.selection();
    const bool another = selection != followed_ || viewing_.role() != followedRole_;
    followed_ = selection;
    followedRole_ = viewing_.role();
    if (!another) return;
    std::string subject = viewing_.role();
    if (selection.card >= 0) {
        const auto& parts =
            viewing_.document().project().row().cards[static_cast<std::size_t>(selection.card)].parts;
        if (selection.part < 0)
            subject = "card";
        else if (std::holds_alternative<project::PicturePart>(
                     parts[static_cast<std::size_t>(selection.part)]))
            subject = "picture";
    }
    if (subject == subject_) return;
    subject_ = subject;
    Q_EMIT changed();
}

std::string pathOf(const std::string& subject) {
    return subject == "card" || subject == "picture" || subject == "row" ? subject : "text/" + subject;
}

bool Context::edit(const QString& name, const std::function<void(project::Project&)>& change,
                   const QString& gesture, const QString& control) const {
    const project::Problems problems = viewing.document().edit(name, change, gesture);
    if (!problems.empty()) showRefusal(problems, control);
    return problems.empty();
}

void Context::showRefusal(const project::Problems& problems, const QString& control) const {
    const QString why = refusal(viewing.document().project(), problems.front());
    showMessage(control.isEmpty() ? why : control + ": " + why);
}

}  // namespace tenter::desktop::panels
