// Reading and formatting what is typed into a number field.
#pragma once

#include <QString>
#include <QStringList>

namespace tenter::desktop::controls {

/// A number and its unit: `px`, `em`, …; empty for a plain number. A keyword (`auto`, `none`) is kept as the
/// unit.
struct Amount {
    double value = 0;
    QString unit;
    friend bool operator==(const Amount&, const Amount&) = default;
};

/// What a field accepts.
struct AmountKind {
    QStringList units;     ///< the first is used when no unit is typed and the value before had none of them
    bool plain = true;     ///< a number without a unit is a value
    QStringList keywords;  ///< such as `auto`, `none`
    double least = 0;
    double most = 10000;
    double usual = 0;  ///< a smaller number may be the start of a larger one, so the field waits
    double step = 1;   ///< of an arrow key, for plain numbers and px
    int decimals = 4;
    QString suffix;  ///< shown after plain numbers; may be typed too
};

/// What typed text means. The states are those of QValidator, and Empty.
struct Reading {
    enum class State { Empty, Intermediate, Invalid, Acceptable };
    State state = State::Empty;
    Amount amount;  ///< for Acceptable
    QString why;    ///< for Invalid: `requirement(kind)`
};

/// Parses `text`. If no unit is typed, that of `before` is used. A decimal comma counts as a point.
Reading read(const QString& text, const AmountKind& kind, const Amount& before);
/// What may be entered: `enter a number from 0 to 400 in em, rem or px, or auto`.
QString requirement(const AmountKind& kind);
/// `1.2 em`, `auto`, `560 px`, `none` in the window’s language, with a plain space and an ASCII minus sign,
/// so that it can be edited and pasted.
QString formatted(const Amount& amount, const AmountKind& kind);
/// The size of one step of an arrow key.
double stepOf(const Amount& amount, const AmountKind& kind);

}  // namespace tenter::desktop::controls
