#include "picture_address.h"

#include "emit/address.h"

namespace tenter::command {

void addPictureAddress(CLI::App& verb, std::string& address) {
    verb.add_option("--address", address,
                    "Address of the folder of the pictures in the HTML, such as /media/. Default: the path "
                    "from the file of --out, or from PROJECT without it.")
        ->type_name("ADDRESS");
}

std::string pictureAddress(const Arguments& arguments, const std::string& folder, const std::string& given) {
    if (!given.empty()) return given.ends_with('/') ? given : given + "/";
    const std::string& from = arguments.out.empty() ? arguments.project : arguments.out;
    return emit::folderAddress(folder, std::filesystem::path(from).parent_path());
}

}  // namespace tenter::command
