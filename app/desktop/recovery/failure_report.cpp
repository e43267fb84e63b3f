#include "recovery/failure_report.h"

#include <execinfo.h>
#include <fcntl.h>
#include <unistd.h>

#include <QApplication>
#include <QClipboard>
#include <QDialog>
#include <QDialogButtonBox>
#include <QDir>
#include <QLabel>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSysInfo>
#include <QVBoxLayout>
#include <array>
#include <csignal>
#include <cstring>

#include "controls/selectable_label.h"

namespace tenter::desktop::recovery {

namespace {

constexpr std::array watched{SIGSEGV, SIGBUS, SIGFPE, SIGILL, SIGABRT};
constexpr int mostFrames = 64;
constexpr std::size_t stackSize = 64U << 10U;  // bytes, for the handler, because the usual stack may be full

// A signal handler may only use what exists already.
std::array<char, 4096> reportFile;
std::array<char, 4096> reportHead;
std::array<char, stackSize> handlerStack;

const char* signalName(int number) {
    switch (number) {
        case SIGSEGV:
            return "Signal: SIGSEGV\n";
        case SIGBUS:
            return "Signal: SIGBUS\n";
        case SIGFPE:
            return "Signal: SIGFPE\n";
        case SIGILL:
            return "Signal: SIGILL\n";
        default:
            return "Signal: SIGABRT\n";
    }
}

void put(int file, const char* text) {
    // Nothing can be done about a failure here.
    [[maybe_unused]] const ssize_t written = ::write(file, text, std::strlen(text));
}

void onCrash(int number) {
    const int file = ::open(reportFile.data(), O_WRONLY | O_CREAT | O_TRUNC | O_CLOEXEC, 0600);
    if (file >= 0) {
        put(file, reportHead.data());
        put(file, signalName(number));
        std::array<void*, mostFrames> frames{};
        backtrace_symbols_fd(frames.data(), backtrace(frames.data(), mostFrames), file);
        ::close(file);
    }
    // The usual end follows: SA_RESETHAND has restored it.
    ::raise(number);
}

template <std::size_t Size>
void keep(std::array<char, Size>& to, const QByteArray& text) {
    std::strncpy(to.data(), text.constData(), Size - 1);
}

}  // namespace

QString failureText(const QString& what) {
    return QString("Tenter %1, Qt %2, %3 on %4, %5\n%6\n")
        .arg(QCoreApplication::applicationVersion(), qVersion(), QSysInfo::prettyProductName(),
             QSysInfo::currentCpuArchitecture(), QGuiApplication::platformName(), what);
}

void watchForCrashes(const QString& folder) {
    QDir().mkpath(folder);
    keep(reportFile,
         QFile::encodeName(folder + QString("/crash-%1.txt").arg(QCoreApplication::applicationPid())));
    keep(reportHead, failureText("The program ended by an internal error.").toUtf8());
    // Its first call loads a library.
    std::array<void*, 1> frame{};
    backtrace(frame.data(), 1);
    stack_t stack{};
    stack.ss_sp = handlerStack.data();
    stack.ss_size = handlerStack.size();
    sigaltstack(&stack, nullptr);
    struct sigaction action {};
    action.sa_handler = onCrash;
    action.sa_flags = static_cast<int>(SA_RESETHAND | SA_ONSTACK);
    for (const int number : watched)
        sigaction(number, &action, nullptr);
}

QString crashReports(const QString& folder) {
    QStringList all;
    for (const QFileInfo& info : QDir(folder).entryInfoList({"crash-*.txt"}, QDir::Files, QDir::Time)) {
        QFile in(info.filePath());
        if (in.open(QIODevice::ReadOnly)) all << QString::fromUtf8(in.readAll());
    }
    return all.join("\n");
}

void removeCrashReports(const QString& folder) {
    for (const QFileInfo& info : QDir(folder).entryInfoList({"crash-*.txt"}, QDir::Files))
        QFile::remove(info.filePath());
}

void showFailure(QWidget* parent, const QString& headline, const QString& safety, const QString& report) {
    QDialog dialog(parent);
    dialog.setWindowTitle(QObject::tr("Internal error"));
    dialog.setMinimumSize(560, 360);
    auto* box = new QVBoxLayout(&dialog);
    box->setContentsMargins(24, 24, 24, 16);
    box->setSpacing(8);
    QLabel* const title = controls::selectableLabel(headline, &dialog);
    QFont strong = title->font();
    strong.setWeight(QFont::DemiBold);
    title->setFont(strong);
    box->addWidget(title);
    box->addWidget(controls::selectableLabel(safety, &dialog));
    auto* text = new QPlainTextEdit(report, &dialog);
    text->setReadOnly(true);
    text->setTabChangesFocus(true);
    text->setLineWrapMode(QPlainTextEdit::NoWrap);
    text->setAccessibleName(QObject::tr("Report, without content of your files"));
    box->addWidget(text, 1);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, &dialog);
    QPushButton* const copy = buttons->addButton(QObject::tr("&Copy report"), QDialogButtonBox::ActionRole);
    box->addWidget(buttons);
    QObject::connect(copy, &QPushButton::clicked, &dialog, [&] {
        QGuiApplication::clipboard()->setText(report);
        copy->setText(QObject::tr("Copied"));
    });
    QObject::connect(buttons, &QDialogButtonBox::rejected, &dialog, &QDialog::reject);
    dialog.exec();
}

}  // namespace tenter::desktop::recovery
