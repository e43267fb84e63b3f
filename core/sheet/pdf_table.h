// Tables of the PDF.
#pragma once

#include "sheet/pdf_writer.h"

namespace tenter::sheet {

/// Sets a table: columns as wide as their content needs, its head again on every page.
void setTable(PdfWriter& out, const Table& table);

}  // namespace tenter::sheet
