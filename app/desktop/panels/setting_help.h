// What each setting is and what it changes: the one source of tooltips, of What’s this and of the manual.
#pragma once

#include <QString>
#include <QWidget>
#include <string>

namespace tenter::desktop::panels {

/// Help on a setting by its path without the role, such as `text/lineHeight` or `card/border/width`; empty if
/// there is none.
QString settingHelp(const std::string& path);
/// Help on a property of the project or on a wish by its accessible name, such as `Container width`; empty if
/// there is none.
QString propertyHelp(const QString& name);
/// Text for What’s this: the title, what the setting is, and what can be entered.
QString whatsThisText(const QString& title, const QString& help, const QString& accepts);

/// The text for What’s this of `widget` or of the nearest widget around it that has one; empty if none has.
QString helpOf(const QWidget* widget);

}  // namespace tenter::desktop::panels
