// Line and font weight of a finding by its severity. Severity is never shown by colour.
#pragma once

#include <QFont>

#include "checks/finding.h"

namespace tenter::desktop::findings {

struct Weight {
    int line = 1;  ///< thickness of bars and of lines on the axis, px
    QFont::Weight font = QFont::Normal;
};

inline Weight weightOf(checks::Severity severity) {
    switch (severity) {
        case checks::Severity::Error:
            return {5, QFont::Bold};
        case checks::Severity::Warning:
            return {3, QFont::DemiBold};
        case checks::Severity::Note:
            break;
    }
    return {1, QFont::Normal};
}

}  // namespace tenter::desktop::findings
