// The part of the Text panel with the wishes on a role's sizes, and “Solve sizes”.
#pragma once

#include "controls/amount.h"
#include "controls/choice_editors.h"
#include "panels/panel.h"
#include "panels/solve_box.h"
#include "project/role_wishes.h"

namespace tenter::desktop::panels {

/// Wishes on the current role. They apply to the current band if that is the edit scope, else to every width,
/// or to other widths that the user chooses; and to every variant. Below are solver settings for all roles.
class WishesPanel : public Panel {
    Q_OBJECT

public:
    explicit WishesPanel(Context& context, QWidget* parent = nullptr);
    void refresh() override;

private:
    /// Conversions between a wish and the value that its editor shows. `read` returns empty for no wish.
    template <class T>
    struct Conversion {
        std::function<project::Json(const T&)> shown;
        std::function<std::optional<T>(const project::Json&)> read;
    };
    template <class T>
    ProjectRow* wish(const QString& title, const QString& name, std::optional<T> project::RoleWishes::*member,
                     controls::Editor* editor, Conversion<T> conversion);
    ProjectRow* number(const QString& title, const QString& name,
                       std::optional<double> project::RoleWishes::*member, controls::AmountKind kind,
                       double factor = 1);
    template <class T>
    ProjectRow* choice(const QString& title, const QString& name,
                       std::optional<T> project::RoleWishes::*member, controls::Editor* editor,
                       std::vector<std::pair<std::string, T>> choices);
    template <class T>
    ProjectRow* general(const QString& title, const QString& name, std::optional<T> project::Wishes::*member,
                        controls::Editor* editor, Conversion<T> conversion);
    void addRatio();
    void addGeneral();
    void addWithout();
    /// Sets a minimum ratio to `other`, by the current sizes.
    void setRatioTo(project::RoleWishes& entry, const std::string& other);
    /// Changes the entry for the current role and widths. A minimum above its maximum is refused.
    void change(project::Project& project, const std::function<void(project::RoleWishes&)>& how);
    void addWidths();
    [[nodiscard]] project::WishWidths widths() const;
    /// Those of the edit scope.
    [[nodiscard]] project::WishWidths widthsInScope() const;
    /// Moves the entry for the chosen widths to other widths, which are chosen then.
    void moveTo(project::Project& project, const project::WishWidths& widths);
    void updateWidthChoices();
    [[nodiscard]] project::RoleWishes wished(const project::Project& project) const;
    [[nodiscard]] const project::RoleWishes* ownEntry(const project::Project& project) const;
    void showCount(controls::Fold* fold, const std::vector<ProjectRow*>& rows);

    QLabel* title_;
    controls::ListEditor* widthChoice_ = nullptr;
    ProjectRow *above_ = nullptr, *upTo_ = nullptr;
    std::optional<project::WishWidths> otherWidths_;  ///< chosen by the user for `otherWidthsRole_`
    std::string otherWidthsRole_;
    bool areCrossed_ = false;  ///< the typed widths end before they start
    bool isRefused_ = false;   ///< the wish typed last has a minimum above its maximum
    std::vector<project::WishWidths> listedWidths_;
    controls::Fold *more_ = nullptr, *solver_ = nullptr;
    std::vector<ProjectRow*> moreRows_, solverRows_;
    controls::ListEditor* ratioTo_ = nullptr;
    std::vector<std::string> listedRoles_;  ///< that a ratio may refer to
    ProjectRow *factor_ = nullptr, *factorKind_ = nullptr, *variants_ = nullptr;
    SolveBox* solve_;
};

}  // namespace tenter::desktop::panels
