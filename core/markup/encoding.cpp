#include "markup/encoding.h"

#include <unicode/ucnv.h>

#include <algorithm>
#include <array>
#include <memory>
#include <optional>

#include "markup/tree.h"
#include "project/utf8.h"
#include "project/wording.h"

namespace tenter::markup {

namespace {

// An encoding of WHATWG Encoding § 4.2: its name, its name in ICU if that differs, and its other labels,
// separated by spaces.
struct KnownEncoding {
    std::string_view name;
    const char* icu;
    std::string_view labels;
};

constexpr std::array<KnownEncoding, 34> knownEncodings{{
    {"UTF-8", nullptr, "utf8 unicode-1-1-utf-8 unicode11utf8 unicode20utf8 x-unicode20utf8"},
    {"IBM866", nullptr, "866 cp866 csibm866"},
    {"ISO-8859-2", nullptr, "iso8859-2 iso88592 iso_8859-2 l2 latin2 csisolatin2"},
    {"ISO-8859-3", nullptr, "iso8859-3 iso88593 iso_8859-3 l3 latin3 csisolatin3"},
    {"ISO-8859-4", nullptr, "iso8859-4 iso88594 iso_8859-4 l4 latin4 csisolatin4"},
    {"ISO-8859-5", nullptr, "iso8859-5 iso88595 iso_8859-5 cyrillic csisolatincyrillic"},
    {"ISO-8859-6", nullptr, "iso8859-6 iso88596 iso_8859-6 arabic asmo-708 ecma-114"},
    {"ISO-8859-7", nullptr, "iso8859-7 iso88597 iso_8859-7 greek greek8 ecma-118 elot_928"},
    {"ISO-8859-8", nullptr, "iso8859-8 iso88598 iso_8859-8 hebrew visual csisolatinhebrew"},
    {"ISO-8859-8-I", "iso-8859-8", "logical csiso88598i"},
    {"ISO-8859-10", nullptr, "iso8859-10 iso885910 l6 latin6 csisolatin6"},
    {"ISO-8859-13", nullptr, "iso8859-13 iso885913"},
    {"ISO-8859-14", nullptr, "iso8859-14 iso885914"},
    {"ISO-8859-15", nullptr, "iso8859-15 iso885915 iso_8859-15 l9 csisolatin9"},
    {"KOI8-R", nullptr, "koi koi8 koi8_r cskoi8r"},
    {"KOI8-U", nullptr, "koi8-ru"},
    {"macintosh", nullptr, "mac x-mac-roman csmacintosh"},
    {"windows-874", nullptr, "dos-874 iso-8859-11 iso8859-11 iso885911 tis-620"},
    {"windows-1250", nullptr, "cp1250 x-cp1250"},
    {"windows-1251", nullptr, "cp1251 x-cp1251"},
    {"windows-1252", nullptr,
     "ascii us-ascii ansi_x3.4-1968 cp1252 x-cp1252 cp819 ibm819 iso-8859-1 iso8859-1 iso88591 iso_8859-1 l1 "
     "latin1 csisolatin1 x-user-defined"},
    {"windows-1253", nullptr, "cp1253 x-cp1253"},
    {"windows-1254", nullptr,
     "cp1254 x-cp1254 iso-8859-9 iso8859-9 iso88599 iso_8859-9 l5 latin5 csisolatin5"},
    {"windows-1255", nullptr, "cp1255 x-cp1255"},
    {"windows-1256", nullptr, "cp1256 x-cp1256"},
    {"windows-1257", nullptr, "cp1257 x-cp1257"},
    {"windows-1258", nullptr, "cp1258 x-cp1258"},
    {"x-mac-cyrillic", "x-mac-cyrillic", "x-mac-ukrainian"},
    // Browsers read GBK as the larger GB 18030.
    {"GBK", "gb18030", "gb2312 gb_2312 gb_2312-80 chinese csgb2312 x-gbk gb18030"},
    {"Big5", "big5-hkscs", "big5-hkscs cn-big5 csbig5 x-x-big5"},
    {"EUC-JP", nullptr, "cseucpkdfmtjapanese x-euc-jp"},
    {"ISO-2022-JP", nullptr, "csiso2022jp"},
    {"Shift_JIS", "windows-31j", "shift-jis sjis ms_kanji ms932 windows-31j x-sjis csshiftjis"},
    {"EUC-KR", "windows-949", "korean ks_c_5601-1987 ks_c_5601-1989 ksc5601 ksc_5601 windows-949 cseuckr"},
}};

char inSmall(char c) {
    return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}

std::string inSmallLetters(std::string_view text) {
    std::string small(text);
    std::ranges::transform(small, small.begin(), inSmall);
    return small;
}

std::string_view stripped(std::string_view text) {
    while (!text.empty() && isSpace(text.front()))
        text.remove_prefix(1);
    while (!text.empty() && isSpace(text.back()))
        text.remove_suffix(1);
    return text;
}

// True if `word` is one of `words`, which are separated by spaces.
bool isAmong(std::string_view words, std::string_view word) {
    for (std::size_t at = 0; at <= words.size();) {
        const std::size_t end = std::min(words.find(' ', at), words.size());
        if (words.substr(at, end - at) == word) return true;
        at = end + 1;
    }
    return false;
}

const KnownEncoding* encodingByLabel(std::string_view written) {
    const std::string label = inSmallLetters(stripped(written));
    // A page in which `<meta` could be read as ASCII is not UTF-16, even if it says so. HTML § 13.2.3.2.
    if (label == "utf-16" || label == "utf-16le" || label == "utf-16be" || label == "unicode")
        return &knownEncodings.front();
    for (const KnownEncoding& known : knownEncodings)
        if (inSmallLetters(known.name) == label || isAmong(known.labels, label)) return &known;
    return nullptr;
}

// The name of the encoding in `content="text/html; charset=…"`. HTML § 2.5.2.
std::string_view charsetWithin(std::string_view content) {
    const std::string small = inSmallLetters(content);
    for (std::size_t at = small.find("charset"); at != std::string::npos; at = small.find("charset", at)) {
        at += 7;
        while (at < small.size() && isSpace(small[at]))
            ++at;
        if (at >= small.size() || small[at] != '=') continue;
        std::string_view rest = stripped(content.substr(at + 1));
        if (rest.empty()) return {};
        if (rest.front() == '"' || rest.front() == '\'') {
            const std::size_t end = rest.find(rest.front(), 1);
            return end == std::string_view::npos ? std::string_view() : rest.substr(1, end - 1);
        }
        return rest.substr(0, rest.find_first_of("; \t\n\f\r"));
    }
    return {};
}

// The attributes of a tag in bytes whose encoding is not known yet. HTML § 13.2.3.2, "get an attribute".
class TagScan {
public:
    TagScan(std::string_view bytes, std::size_t at) : bytes_(bytes), at_(at) {}

    // False at the end of the tag.
    bool next(std::string& name, std::string_view& value) {
        while (at_ < bytes_.size() && (isSpace(bytes_[at_]) || bytes_[at_] == '/'))
            ++at_;
        if (at_ >= bytes_.size() || bytes_[at_] == '>') return false;
        const std::size_t start = at_++;
        while (at_ < bytes_.size() && !isSpace(bytes_[at_]) && !isOneOf("=/>"))
            ++at_;
        name = inSmallLetters(bytes_.substr(start, at_ - start));
        value = {};
        while (at_ < bytes_.size() && isSpace(bytes_[at_]))
            ++at_;
        if (at_ >= bytes_.size() || bytes_[at_] != '=') return true;
        ++at_;
        while (at_ < bytes_.size() && isSpace(bytes_[at_]))
            ++at_;
        readValue(value);
        return true;
    }
    [[nodiscard]] std::size_t at() const { return at_; }

private:
    [[nodiscard]] bool isOneOf(std::string_view set) const {
        return set.find(bytes_[at_]) != std::string_view::npos;
    }
    void readValue(std::string_view& value) {
        if (at_ >= bytes_.size()) return;
        if (isOneOf("\"'")) {
            const char quote = bytes_[at_++];
            const std::size_t end = std::min(bytes_.find(quote, at_), bytes_.size());
            value = bytes_.substr(at_, end - at_);
            at_ = std::min(end + 1, bytes_.size());
            return;
        }
        const std::size_t start = at_;
        while (at_ < bytes_.size() && !isSpace(bytes_[at_]) && bytes_[at_] != '>')
            ++at_;
        value = bytes_.substr(start, at_ - start);
    }

    std::string_view bytes_;
    std::size_t at_;
};

// The encoding that one meta element names; empty if none.
std::string_view encodingOfMeta(TagScan& scan) {
    std::string name;
    std::string_view value;
    std::string_view charset;
    std::string_view content;
    bool isContentType = false;
    while (scan.next(name, value)) {
        if (name == "charset" && charset.empty()) charset = value;
        if (name == "content" && content.empty()) content = value;
        if (name == "http-equiv") isContentType = inSmallLetters(value) == "content-type";
    }
    if (!charset.empty()) return charset;
    return isContentType ? charsetWithin(content) : std::string_view();
}

// The encoding that the first bytes of the page name. HTML § 13.2.3.2, "prescan a byte stream".
std::string_view encodingNamedBy(std::string_view bytes) {
    bytes = bytes.substr(0, 1024);
    for (std::size_t at = 0; at < bytes.size(); ++at) {
        if (bytes[at] != '<') continue;
        const std::string_view rest = bytes.substr(at);
        if (rest.starts_with("<!--")) {
            at = std::min(bytes.find("-->", at + 2), bytes.size());
        } else if (inSmallLetters(rest.substr(0, 5)) == "<meta" && rest.size() > 5 &&
                   (isSpace(rest[5]) || rest[5] == '/')) {
            TagScan scan(bytes, at + 6);
            const std::string_view said = encodingOfMeta(scan);
            if (!said.empty()) return said;
            at = scan.at();
        } else if (rest.size() > 1 && (rest[1] == '!' || rest[1] == '/' || rest[1] == '?')) {
            at = std::min(bytes.find('>', at), bytes.size());
        } else if (rest.size() > 1 && inSmall(rest[1]) >= 'a' && inSmall(rest[1]) <= 'z') {
            TagScan scan(bytes, std::min(bytes.find_first_of(" \t\n\f\r>", at), bytes.size()));
            std::string name;
            std::string_view value;
            while (scan.next(name, value)) {
            }
            at = scan.at();
        }
    }
    return {};
}

// The text as UTF-8; empty if ICU does not support the encoding.
std::optional<std::string> convertedFrom(const char* encoding, std::string_view bytes) {
    UErrorCode status = U_ZERO_ERROR;
    const std::unique_ptr<UConverter, decltype(&ucnv_close)> from(ucnv_open(encoding, &status), &ucnv_close);
    const std::unique_ptr<UConverter, decltype(&ucnv_close)> to(ucnv_open("UTF-8", &status), &ucnv_close);
    if (U_FAILURE(status)) return std::nullopt;
    std::string out;
    std::array<char, 16384> target{};
    std::array<UChar, 4096> pivot{};
    UChar* pivotFrom = pivot.data();
    UChar* pivotTo = pivot.data();
    const char* source = bytes.data();
    bool isFirst = true;
    do {
        status = U_ZERO_ERROR;
        char* end = target.data();
        ucnv_convertEx(to.get(), from.get(), &end, target.data() + target.size(), &source,
                       bytes.data() + bytes.size(), pivot.data(), &pivotFrom, &pivotTo,
                       pivot.data() + pivot.size(), isFirst, true, &status);
        out.append(target.data(), end);
        isFirst = false;
    } while (status == U_BUFFER_OVERFLOW_ERROR);
    return U_FAILURE(status) ? std::nullopt : std::optional(std::move(out));
}

Characters readAs(const KnownEncoding& encoding, std::string_view bytes) {
    const std::string name(encoding.name);
    std::optional<std::string> text =
        convertedFrom(encoding.icu != nullptr ? encoding.icu : name.c_str(), bytes);
    // Parsing replaces bytes that are not UTF-8.
    return text ? Characters{std::move(*text), name} : Characters{std::string(bytes), "UTF-8"};
}

}  // namespace

Characters charactersOf(std::string_view bytes, const std::string& file, project::Problems& problems) {
    if (bytes.starts_with("\xEF\xBB\xBF")) return {std::string(bytes.substr(3)), "UTF-8"};
    for (const auto& [mark, encoding] : {std::pair{"\xFE\xFF", "UTF-16BE"}, {"\xFF\xFE", "UTF-16LE"}}) {
        if (bytes.starts_with(mark)) return {convertedFrom(encoding, bytes.substr(2)).value_or(""), encoding};
    }
    const std::string_view said = encodingNamedBy(bytes);
    if (!said.empty()) {
        const KnownEncoding* encoding = encodingByLabel(said);
        if (encoding != nullptr && encoding != &knownEncodings.front()) return readAs(*encoding, bytes);
        if (encoding != nullptr) return {std::string(bytes), "UTF-8"};
        problems.push_back(
            {file, project::lineAndColumn(bytes, static_cast<std::size_t>(said.data() - bytes.data())),
             "The page names an unknown encoding, " + project::inQuotes(said) + ".",
             "Check that its letters are right, or save the page as UTF-8."});
    }
    if (!project::firstBadByte(bytes)) return {std::string(bytes), "UTF-8"};
    return readAs(*encodingByLabel("windows-1252"), bytes);
}

}  // namespace tenter::markup
