// The window: `tenter [PROJECT] [--theme light|dark]`; and, without one, `tenter --picture FILE PROJECT`.
#include <QApplication>
#include <QCommandLineParser>
#include <QIcon>
#include <QImageWriter>
#include <QSaveFile>

#include "row/row_picture.h"
#include "window/main_window.h"
#include "window/theme.h"

namespace {

/// Paints the project's row at six widths into a picture file; the exit code.
int paintPicture(const QString& picture, const QString& file) {
    using namespace tenter::desktop;
    Document document;
    tenter::project::Problems problems;
    if (!document.open(file.toStdString(), problems)) {
        for (const tenter::project::Problem& problem : problems)
            qCritical("%s", problem.line().c_str());
        return 2;
    }
    Viewing viewing(document);
    const QImage image = row::rowPicture(viewing, row::tellingWidths(document.project(), 0));
    // Replaced whole, or left.
    QSaveFile out(picture);
    QImageWriter writer(&out, "png");
    if (!out.open(QIODevice::WriteOnly) || !writer.write(image) || !out.commit()) {
        qCritical("%s: cannot be written; choose another file", qPrintable(picture));
        return 2;
    }
    return 0;
}

}  // namespace

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
    const QCommandLineOption picture("picture", "Paints the row at six widths into FILE (PNG), and stops.",
                                     "FILE");
    parser.addOption(picture);
    parser.addPositionalArgument("PROJECT", "A .tenter.json file to open.", "[PROJECT]");
    parser.process(application);
    const QString wanted = parser.value(theme);
    if (!wanted.isEmpty() && wanted != "light" && wanted != "dark") {
        qCritical("tenter: --theme: \"%s\" is no theme; write light or dark", qPrintable(wanted));
        return 2;
    }

    if (parser.isSet(picture)) {
        if (parser.positionalArguments().size() == 1)
            return paintPicture(parser.value(picture), parser.positionalArguments().first());
        qCritical("tenter: --picture: name one project file");
        return 2;
    }

    window::useTheme(wanted);
    QIcon icon;
    for (const int side : {32, 64, 256})
        icon.addFile(QString(":/icons/tenter-%1.png").arg(side));
    QApplication::setWindowIcon(icon);
    window::MainWindow mainWindow;
    mainWindow.show();
    if (const QStringList files = parser.positionalArguments(); !files.isEmpty())
        mainWindow.openFile(files.first());
    return QApplication::exec();
}
