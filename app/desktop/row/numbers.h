// Numbers as the window writes them.
#pragma once

#include <QString>

namespace tenter::desktop::row {

/// `value` to at most `decimals` places, without trailing zeros, thousands parted by a thin space that does
/// not break (U+202F).
QString decimal(double value, int decimals);

}  // namespace tenter::desktop::row
