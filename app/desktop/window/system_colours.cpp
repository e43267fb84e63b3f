#include "window/system_colours.h"

#include <QDBusArgument>
#include <QDBusMessage>
#include <QFile>
#include <QMap>
#include <QVariantMap>
#include <utility>

namespace tenter::desktop::window {

namespace {

const QString service = "org.freedesktop.portal.Desktop";
const QString path = "/org/freedesktop/portal/desktop";
const QString interface = "org.freedesktop.portal.Settings";
const QString appearance = "org.freedesktop.appearance";
// GNOME 43 of Debian 12 says high contrast by its theme only.
const QString gnome = "org.gnome.desktop.interface";
constexpr int longestWait = 300;  // ms

}  // namespace

SystemColours systemColours(const QDBusConnection& bus) {
    if (!bus.isConnected()) return {};
    QDBusMessage call = QDBusMessage::createMethodCall(service, path, interface, "ReadAll");
    call << QStringList{appearance, gnome};
    const QDBusMessage reply = bus.call(call, QDBus::Block, longestWait);
    if (reply.type() != QDBusMessage::ReplyMessage || reply.signature() != "a{sa{sv}}") return {};
    const auto settings = qdbus_cast<QMap<QString, QVariantMap>>(reply.arguments().first());
    SystemColours colours;
    // 0: no preference, 1: dark, 2: light.
    const uint scheme = settings[appearance].value("color-scheme").toUInt();
    if (scheme == 1 || scheme == 2) colours.dark = scheme == 1;
    if (const QVariant contrast = settings[appearance].value("contrast"); contrast.isValid())
        colours.highContrast = contrast.toUInt() == 1;
    const QString theme = settings[gnome].value("gtk-theme").toString();
    if (theme.startsWith("HighContrast")) {
        colours.highContrast = true;
        if (theme.endsWith("Inverse")) colours.dark = true;
    }
    return colours;
}

QDBusConnection sessionBus() {
    const QString runtime = qEnvironmentVariable("XDG_RUNTIME_DIR");
    const bool isThere = qEnvironmentVariableIsSet("DBUS_SESSION_BUS_ADDRESS") ||
                         (!runtime.isEmpty() && QFile::exists(runtime + "/bus"));
    return isThere ? QDBusConnection::sessionBus() : QDBusConnection("no session bus");
}

ColourWatch::ColourWatch(QDBusConnection bus, std::function<void()> then, QObject* parent)
    : QObject(parent), then_(std::move(then)) {
    if (bus.isConnected())
        bus.connect({}, path, interface, "SettingChanged", this, SLOT(settingChanged(QString, QString)));
}

void ColourWatch::settingChanged(const QString& space, const QString& key) {
    const bool isRead = space == appearance ? key == "color-scheme" || key == "contrast"
                                            : space == gnome && key == "gtk-theme";
    if (isRead) then_();
}

}  // namespace tenter::desktop::window
