// What can be typed into a number field, and what it means.
#pragma once

#include <QString>
#include <QStringList>

namespace tenter::desktop::controls {

/// A number with its unit: `px`, `em`, …; empty for a plain number; `auto` and `none` are units without one.
struct Amount {
    double value = 0;
    QString unit;
    friend bool operator==(const Amount&, const Amount&) = default;
};

/// What a field takes.
struct AmountKind {
    QStringList units;     ///< the first is meant when no unit is typed and none stood there before
    bool plain = true;     ///< a number without a unit may be meant
    QStringList keywords;  ///< `auto`, `none`
    double least = 0;
    double most = 10000;
    double usual = 0;  ///< a number below it may be the start of a larger one: it waits
    double step = 1;   ///< of plain numbers and px
    int decimals = 4;
    QString suffix;  ///< shown behind plain numbers, and taken along
};

/// What typed text is worth.
struct Reading {
    enum class State { Empty, OnItsWay, Refused, Good };
    State state = State::Empty;
    Amount amount;
    QString why;  ///< for Refused: what would be taken
};

/// Reads `text`; `before` gives the unit if none is typed. A decimal comma is taken for a point.
Reading read(const QString& text, const AmountKind& kind, const Amount& before);
/// `1.2 em`, `auto`, `560 px`.
QString shown(const Amount& amount, const AmountKind& kind);
/// One step of an arrow key.
double stepOf(const Amount& amount, const AmountKind& kind);

}  // namespace tenter::desktop::controls
