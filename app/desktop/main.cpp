// Starts the program: `tenter [OPTIONS] [PROJECT]`; see arguments.cpp for its help.
#include <QApplication>
#include <QIcon>
#include <QImageWriter>
#include <QSaveFile>
#include <cstdio>

#include "about/about.h"
#include "arguments.h"
#include "language/language.h"
#include "recovery/failure_report.h"
#include "recovery/safe_application.h"
#include "recovery/unsaved_work.h"
#include "row/row_picture.h"
#include "window/main_window.h"
#include "window/theme.h"

namespace {

using namespace tenter::desktop;

/// Writes the project's row at its key widths to a PNG file, whole or not at all. Returns the exit code.
int writePicture(const QString& picture, const QString& file) {
    Session session;
    tenter::project::Problems problems;
    if (!session.document.open(file.toStdString(), problems)) {
        for (const tenter::project::Problem& problem : problems)
            std::fprintf(stderr, "%s\n", problem.line().c_str());
        return 2;
    }
    const QImage image =
        row::rowPicture(session.layouts, session.document, row::keyWidths(session.document.project(), 0));
    QSaveFile out(picture);
    QImageWriter writer(&out, "png");
    if (!out.open(QIODevice::WriteOnly) || !writer.write(image) || !out.commit()) {
        std::fprintf(stderr, "%s: the file cannot be written; choose another file or folder.\n",
                     qUtf8Printable(picture));
        return 2;
    }
    return 0;
}

int openWindow(const Arguments& arguments) {
    window::useTheme(arguments.theme);
    QIcon icon;
    for (const int side : {32, 64, 256})
        icon.addFile(QString(":/icons/tenter-%1.png").arg(side));
    QApplication::setWindowIcon(icon);
    Session session;
    window::MainWindow mainWindow(session);
    mainWindow.show();
    recovery::watchForCrashes(recovery::stateFolder());
    if (!arguments.project.isEmpty()) mainWindow.openFile(arguments.project);
    mainWindow.keepUnsavedWork(recovery::stateFolder());
    return QApplication::exec();
}

}  // namespace

int main(int argc, char** argv) {
    QCoreApplication::setApplicationName("Tenter");
    QCoreApplication::setOrganizationName("Tenter");
    QCoreApplication::setApplicationVersion(QString::fromUtf8(tenter::about::version().data()));
    QStringList words;
    for (int i = 0; i < argc; ++i)
        words << QString::fromLocal8Bit(argv[i]);
    // QApplication aborts where there is no display, so arguments are read first.
    int exitCode = 0;
    const auto arguments = readArguments(words, exitCode);
    if (!arguments) return exitCode;
    // A picture needs no display.
    if (!arguments->picture.isEmpty() && !qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");

    QApplication::setDesktopFileName("org.tenter.Tenter");
    QApplication::setHighDpiScaleFactorRoundingPolicy(Qt::HighDpiScaleFactorRoundingPolicy::PassThrough);
    const recovery::SafeApplication application(argc, argv);
    language::use(arguments->language);
    return arguments->picture.isEmpty() ? openWindow(*arguments)
                                        : writePicture(arguments->picture, arguments->project);
}
