// The window: `tenter [PROJECT] [--theme light|dark]`.
#include <QApplication>
#include <QCommandLineParser>
#include <QIcon>

#include "window/main_window.h"
#include "window/theme.h"

int main(int argc, char** argv) {
    using namespace tenter::desktop;
    QApplication::setApplicationName("Tenter");
    QApplication::setOrganizationName("Tenter");
    QApplication::setApplicationVersion("0.1.0");
    QApplication::setDesktopFileName("org.tenter.Tenter");
    QApplication::setHighDpiScaleFactorRoundingPolicy(Qt::HighDpiScaleFactorRoundingPolicy::PassThrough);
    const QApplication application(argc, argv);

    QCommandLineParser parser;
    parser.setApplicationDescription("Makes a row of cards that holds together at every width.");
    parser.addHelpOption();
    parser.addVersionOption();
    const QCommandLineOption theme("theme", "Colours of the window: light or dark; the system's if left out.",
                                   "light|dark");
    parser.addOption(theme);
    parser.addPositionalArgument("PROJECT", "A .tenter.json file to open.", "[PROJECT]");
    parser.process(application);
    const QString wanted = parser.value(theme);
    if (!wanted.isEmpty() && wanted != "light" && wanted != "dark") {
        qCritical("tenter: --theme: \"%s\" is no theme; write light or dark", qPrintable(wanted));
        return 2;
    }

    window::useTheme(wanted);
    QIcon icon;
    for (const int side : {32, 64, 256}) icon.addFile(QString(":/icons/tenter-%1.png").arg(side));
    QApplication::setWindowIcon(icon);
    window::MainWindow mainWindow;
    mainWindow.show();
    if (const QStringList files = parser.positionalArguments(); !files.isEmpty()) mainWindow.openFile(files.first());
    return QApplication::exec();
}
