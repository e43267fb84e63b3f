// What the desktop says about colours: dark or light, high contrast.
#pragma once

#include <QDBusConnection>
#include <QObject>
#include <functional>
#include <optional>

namespace tenter::desktop::window {

/// What the person has set in the desktop; empty where the desktop does not say.
struct SystemColours {
    std::optional<bool> dark;
    std::optional<bool> highContrast;
    bool operator==(const SystemColours&) const = default;
};

/// Reads the settings portal, which GNOME, KDE Plasma and others have. Qt 6.4 reads neither of the two there.
/// Waits for at most 0.3 s. Source: XDG Desktop Portal, interface org.freedesktop.portal.Settings.
SystemColours systemColours(const QDBusConnection& bus);

/// The session bus, without starting one; a connection that is not open where there is none.
QDBusConnection sessionBus();

/// Calls `then` whenever a setting of the portal that `systemColours` reads has changed.
class ColourWatch : public QObject {
    Q_OBJECT

public:
    ColourWatch(QDBusConnection bus, std::function<void()> then, QObject* parent);

private Q_SLOTS:
    void settingChanged(const QString& space, const QString& key);

private:
    std::function<void()> then_;
};

}  // namespace tenter::desktop::window
