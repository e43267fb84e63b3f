// What Cairo's PDF files lack: language, alternative texts, scopes of table heads.
#pragma once

#include <optional>
#include <string>
#include <vector>

namespace tenter::sheet {

/// What to add to a tagged PDF.
struct PdfAdditions {
    std::string language;                       ///< BCP 47
    std::vector<std::string> alternativeTexts;  ///< of the figures, in document order; UTF-8
    std::vector<bool> columnHeads;              ///< of the TH elements, in document order: true for a column
};

/// `pdf`, as Cairo 1.16 writes it, with an incremental update (ISO 32000-1 § 7.5.6) that adds them. Empty if
/// the file does not have that many figures and table heads.
std::optional<std::string> withAdditions(std::string pdf, const PdfAdditions& additions);

/// A PDF text string in hexadecimal: UTF-16BE with a byte order mark. ISO 32000-1 § 7.9.2.2.
std::string pdfString(const std::string& utf8);

}  // namespace tenter::sheet
