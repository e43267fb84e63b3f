// The bytes of font files, read once for the whole process.
#pragma once

#include <cstdint>
#include <filesystem>
#include <memory>
#include <string>

namespace tenter::text {

/// The size in bytes of the largest font file that is read.
inline constexpr std::uintmax_t largestFont = 64U << 20U;

/// The sfnt bytes of a font file; empty if it is not a readable font. Every `Fonts` that uses the file gets
/// the same bytes, as long as the file does not change: background jobs have fonts of their own, but files
/// are large. May be called on any thread.
std::shared_ptr<const std::string> fontBytes(const std::filesystem::path& file);

}  // namespace tenter::text
