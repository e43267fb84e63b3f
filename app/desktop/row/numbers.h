// Numbers as the window writes them.
#pragma once

#include <QString>

namespace tenter::desktop::row {

/// Below this slack another browser may break the line otherwise: measured over two engines, every difference
/// between them lay within a quarter of a per cent.
inline constexpr double tightSlack = 0.0025;

/// `value` to at most `decimals` places, without trailing zeros, thousands parted by a thin space (U+2009).
QString decimal(double value, int decimals);

}  // namespace tenter::desktop::row
