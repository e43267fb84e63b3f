// Colours follow what the desktop says, by a settings portal of the test's own.
#include <QApplication>
#include <QDBusMetaType>
#include <QDBusServer>
#include <QDBusVariant>
#include <QMenu>
#include <QThread>
#include <QtTest>

#include "row/ink.h"
#include "window/style.h"
#include "window/system_colours.h"
#include "window/theme.h"

namespace tenter::desktop {

using Settings = QMap<QString, QVariantMap>;

/// The settings portal of a desktop.
class Portal : public QObject {
    Q_OBJECT
    Q_CLASSINFO("D-Bus Interface", "org.freedesktop.portal.Settings")

public:
    Settings settings;

public Q_SLOTS:
    // NOLINTNEXTLINE(readability-identifier-naming): the name of the method on the bus
    Settings ReadAll(const QStringList& spaces) {
        Settings asked;
        for (const QString& space : spaces)
            if (settings.contains(space)) asked[space] = settings[space];
        return asked;
    }

Q_SIGNALS:
    void SettingChanged(const QString& space, const QString& key, const QDBusVariant& value);
};

class AppearanceTest : public QObject {
    Q_OBJECT

private:
    /// Sets a value in the desktop, which says so.
    void set(const QString& space, const QString& key, const QVariant& value) {
        QMetaObject::invokeMethod(
            portal_,
            [this, space, key, value] {
                portal_->settings[space][key] = value;
                Q_EMIT portal_->SettingChanged(space, key, QDBusVariant(value));
            },
            Qt::BlockingQueuedConnection);
    }
    void clear() {
        QMetaObject::invokeMethod(
            portal_, [this] { portal_->settings.clear(); }, Qt::BlockingQueuedConnection);
    }

    QThread thread_;  // the desktop's
    QDBusServer* server_ = nullptr;
    Portal* portal_ = nullptr;
    std::unique_ptr<QDBusConnection> bus_;

private Q_SLOTS:
    void initTestCase() {
        qDBusRegisterMetaType<Settings>();
        auto* starter = new QObject;
        starter->moveToThread(&thread_);
        thread_.start();
        QString address;
        QMetaObject::invokeMethod(
            starter,
            [&] {
                server_ = new QDBusServer(starter);
                portal_ = new Portal;
                portal_->setParent(starter);
                connect(server_, &QDBusServer::newConnection, starter, [this](QDBusConnection connection) {
                    connection.registerObject(
                        "/org/freedesktop/portal/desktop", portal_,
                        QDBusConnection::ExportAllSlots | QDBusConnection::ExportAllSignals);
                });
                address = server_->address();
            },
            Qt::BlockingQueuedConnection);
        bus_ = std::make_unique<QDBusConnection>(QDBusConnection::connectToPeer(address, "desktop"));
        QTRY_VERIFY(bus_->isConnected());
        // The object is there once the server knows of the connection.
        set("org.freedesktop.appearance", "color-scheme", 1U);
        QTRY_COMPARE(window::systemColours(*bus_).dark, std::optional(true));
    }
    void cleanupTestCase() {
        QDBusConnection::disconnectFromPeer("desktop");
        thread_.quit();
        thread_.wait();
    }
    void init() { clear(); }

    void readsDarkAndHighContrast() {
        QCOMPARE(window::systemColours(*bus_), window::SystemColours());
        set("org.freedesktop.appearance", "color-scheme", 2U);
        set("org.freedesktop.appearance", "contrast", 0U);
        QCOMPARE(window::systemColours(*bus_), (window::SystemColours{false, false}));
        set("org.freedesktop.appearance", "color-scheme", 1U);
        set("org.freedesktop.appearance", "contrast", 1U);
        QCOMPARE(window::systemColours(*bus_), (window::SystemColours{true, true}));
        // No preference.
        set("org.freedesktop.appearance", "color-scheme", 0U);
        QCOMPARE(window::systemColours(*bus_), (window::SystemColours{{}, true}));
    }

    void readsTheHighContrastThemesOfGnome() {
        set("org.gnome.desktop.interface", "gtk-theme", "Adwaita");
        QCOMPARE(window::systemColours(*bus_), window::SystemColours());
        set("org.gnome.desktop.interface", "gtk-theme", "HighContrast");
        QCOMPARE(window::systemColours(*bus_), (window::SystemColours{{}, true}));
        set("org.gnome.desktop.interface", "gtk-theme", "HighContrastInverse");
        QCOMPARE(window::systemColours(*bus_), (window::SystemColours{true, true}));
    }

    void hearsOfChanges() {
        int changes = 0;
        const window::ColourWatch watch(
            *bus_, [&] { ++changes; }, nullptr);
        set("org.freedesktop.appearance", "contrast", 1U);
        QTRY_COMPARE(changes, 1);
        set("org.gnome.desktop.interface", "gtk-theme", "HighContrast");
        QTRY_COMPARE(changes, 2);
        set("org.gnome.desktop.interface", "cursor-size", 32);
        set("org.freedesktop.appearance", "color-scheme", 1U);
        QTRY_COMPARE(changes, 3);
    }

    void choosesThePaletteBySettingsAndByThePaletteOfTheSystem() {
        const auto palette = [](std::optional<bool> dark, std::optional<bool> contrast,
                                const QPalette& system = window::lightPalette()) {
            return window::paletteFor({dark, contrast}, system);
        };
        QCOMPARE(palette({}, {}), window::lightPalette());
        QCOMPARE(palette(true, false), window::darkPalette());
        QCOMPARE(palette(true, true), window::contrastDarkPalette());
        QCOMPARE(palette({}, true), window::contrastLightPalette());
        QCOMPARE(palette({}, {}, window::darkPalette()), window::darkPalette());
        QCOMPARE(palette(false, {}, window::darkPalette()), window::lightPalette());
        // A desktop whose palette Qt knows needs no portal.
        QCOMPARE(palette({}, {}, window::contrastDarkPalette()), window::contrastDarkPalette());
    }

    void linesBetweenEntriesOfMenusAreSeen() {
        window::Style style;
        for (const QPalette& palette : {window::lightPalette(), window::darkPalette(),
                                        window::contrastLightPalette(), window::contrastDarkPalette()}) {
            QMenu menu;
            menu.setStyle(&style);
            menu.setPalette(palette);
            menu.addAction("Above");
            menu.addSeparator();
            menu.addAction("Below");
            const QRect between = menu.actionGeometry(menu.actions().at(1));
            const QImage image = menu.grab().toImage();
            double most = 1;
            for (int y = between.top(); y <= between.bottom(); ++y)
                most = std::max(most, row::contrast(image.pixelColor(between.center().x(), y),
                                                    palette.color(QPalette::Base)));
            QVERIFY2(most >= 1.25, qPrintable(QString::number(most)));
        }
    }

    // Without a desktop there is nothing to read, and nothing to wait for.
    void startsWithoutADesktop() {
        const QDBusConnection none("no such connection");
        QCOMPARE(window::systemColours(none), window::SystemColours());
    }
};

}  // namespace tenter::desktop

QTEST_MAIN(tenter::desktop::AppearanceTest)
#include "appearance_test.moc"
