// What the settings panels edit, and what every panel is given.
#pragma once

#include <QObject>
#include <functional>
#include <string>

#include "session/session.h"

namespace tenter::desktop::panels {

/// The subject of the settings panels: a text role, `card`, `picture` or `row`. Follows the selection.
class Target : public QObject {
    Q_OBJECT

public:
    Target(const Document& document, SelectionModel& selection, QObject* parent = nullptr);
    [[nodiscard]] const std::string& subject() const { return subject_; }
    /// True for a text role.
    [[nodiscard]] bool isText() const;
    void set(const std::string& subject);

Q_SIGNALS:
    void changed();

private:
    void follow();
    const Document& document_;
    SelectionModel& selection_;
    std::string subject_ = "heading";
    std::optional<Place> followed_;
    std::string followedRole_;
};

/// The start of the setting paths of a subject: `text/heading`, `card`.
std::string pathOf(const std::string& subject);

/// What every panel is given.
struct Context {
    Session& session;
    Target& target;
    /// Shows a line in the foot of the side panel until the next edit, or until the field loses the focus.
    std::function<void(const QString&)> showMessage;
    /// Puts a widget below the panels, where it does not scroll away; it is shown when it is not hidden.
    std::function<void(QWidget*)> pin;
    /// Edits the document (Document::edit). If the edit is refused, shows why: there, behind `control`, the
    /// name of the field or button, if it has one. True if it is not refused.
    bool edit(const QString& name, const std::function<void(project::Project&)>& change,
              const QString& gesture = {}, const QString& control = {}) const;
    /// Shows there why an edit was refused.
    void showRefusal(const project::Problems& problems, const QString& control) const;
    /// Shows there what is wrong with the text in the field `name`; clears the line if `why` is empty.
    void showError(const QString& name, const QString& why) const {
        showMessage(why.isEmpty() ? QString() : name + ": " + why + '.');
    }
};

}  // namespace tenter::desktop::panels
