// The date of a sheet.
#pragma once

#include <optional>
#include <string>

namespace tenter::sheet {

/// The date for a sheet, `2026-11-29`: `given`, or if that is empty the UTC date of `epoch` (seconds since
/// 1970 as text, as in the environment variable SOURCE_DATE_EPOCH; null: not set), or today. Empty if `given`
/// is not a date.
std::optional<std::string> dateFor(const std::string& given, const char* epoch);

}  // namespace tenter::sheet
