// The language of the window: its texts, its numbers and its direction.
#pragma once

#include <QString>
#include <QStringList>

namespace tenter::desktop::language {

/// The codes of the languages that the window has, such as `de` and `en`; English is the first.
QStringList available();
/// The language of the window for `wanted`, languages in order of preference such as `de-AT`, `de`, `en`;
/// English if the window has none of them.
QString chosenFrom(const QStringList& wanted);
/// Shows the window in the language `code`, one of `available()`; empty: in the language of the system. For
/// the whole program, before the first window is made. English is used until then.
void use(const QString& code);
/// The code of the language in use.
QString current();
/// The decimal point of numbers in the window: `.`, or `,` in German.
QString decimalPoint();
/// True if a title inside a sentence starts with a small letter, as in English. German writes nouns with
/// capital letters, so titles stay as they are.
bool lowersTitles();

}  // namespace tenter::desktop::language
