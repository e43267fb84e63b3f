#include "project/problem.h"

#include "project/utf8.h"

namespace tenter::project {

std::string Problem::line() const {
    std::string text;
    if (!file.empty()) text += file + ": ";
    if (!place.empty()) text += place + ": ";
    text += what;
    if (!mend.empty()) text += "; " + mend;
    return visible(text);
}

}  // namespace tenter::project
