#include "panels/target.h"

#include <variant>

#include "document/refusal.h"

namespace tenter::desktop::panels {

Target::Target(const Document& document, SelectionModel& selection, QObject* parent)
    : QObject(parent), document_(document), selection_(selection) {
    connect(&selection_, &SelectionModel::changed, this, &Target::follow);
}

bool Target::isText() const {
    return subject_ != "card" && subject_ != "picture" && subject_ != "row";
}

void Target::set(const std::string& subject) {
    if (subject == subject_) return;
    subject_ = subject;
    if (isText()) selection_.selectRole(subject);
    Q_EMIT changed();
}

void Target::follow() {
    const std::optional<Place> place = selection_.place();
    const bool another = place != followed_ || selection_.role() != followedRole_;
    followed_ = place;
    followedRole_ = selection_.role();
    if (!another) return;
    std::string subject = selection_.role();
    if (place && !place->part)
        subject = "card";
    else if (place &&
             std::holds_alternative<project::PicturePart>(document_.project().part(*place->partRef())))
        subject = "picture";
    if (subject == subject_) return;
    subject_ = subject;
    Q_EMIT changed();
}

std::string pathOf(const std::string& subject) {
    return subject == "card" || subject == "picture" || subject == "row" ? subject : "text/" + subject;
}

bool Context::edit(const QString& name, const std::function<void(project::Project&)>& change,
                   const QString& gesture, const QString& control) const {
    const project::Problems problems = session.document.edit(name, change, gesture);
    if (!problems.empty()) showRefusal(problems, control);
    return problems.empty();
}

void Context::showRefusal(const project::Problems& problems, const QString& control) const {
    const QString why = refusal(session.document.project(), problems.front());
    showMessage(control.isEmpty() ? why : control + ": " + why);
}

}  // namespace tenter::desktop::panels
