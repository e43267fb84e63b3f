// What is kept of an internal error: a text that a person can send, without content of files.
#pragma once

#include <QString>
#include <QWidget>

namespace tenter::desktop::recovery {

/// Version, platform and libraries, then `what` went wrong.
QString failureText(const QString& what);

/// Writes a report into `folder` if the program is ended by a signal such as SIGSEGV or by an uncaught
/// exception: what `failureText` says, the signal, and the addresses of the stack. To be called once.
void watchForCrashes(const QString& folder);

/// The reports in `folder`, joined, newest first; empty if there are none.
QString crashReports(const QString& folder);
/// Removes them.
void removeCrashReports(const QString& folder);

/// Shows a report with a button that copies it. `headline`: what happened; `safety`: what became of the work.
void showFailure(QWidget* parent, const QString& headline, const QString& safety, const QString& report);

}  // namespace tenter::desktop::recovery
