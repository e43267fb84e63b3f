// What the settings panels are about, and where they say what happened.
#pragma once

#include <QObject>
#include <functional>
#include <string>

#include "document/viewing.h"

namespace tenter::desktop::panels {

/// A text role, `card`, `picture` or `row`; follows what is selected in the row view.
class Target : public QObject {
    Q_OBJECT

public:
    explicit Target(Viewing& viewing, QObject* parent = nullptr);
    [[nodiscard]] const std::string& subject() const { return subject_; }
    /// True for a text role.
    [[nodiscard]] bool isText() const;
    void set(const std::string& subject);

signals:
    void changed();

private:
    void follow();
    Viewing& viewing_;
    std::string subject_ = "heading";
    Viewing::Selection followed_;
    std::string followedRole_;
};

/// The start of a subject's setting paths: `text/heading`, `card`.
std::string pathOf(const std::string& subject);

/// What every panel is given.
struct Context {
    Viewing& viewing;
    Target& target;
    /// A line of help or refusal in the side panel's foot, until something is edited or the field is left.
    std::function<void(const QString&)> say;
    void refuse(const QString& name, const QString& why) const {
        say(why.isEmpty() ? QString() : name + ": " + why + '.');
    }
};

}  // namespace tenter::desktop::panels
