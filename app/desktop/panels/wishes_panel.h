// The part of the Text panel that says what should hold of a role's sizes, and solves for it.
#pragma once

#include "controls/amount.h"
#include "controls/choice_editors.h"
#include "panels/panel.h"
#include "panels/solve_box.h"
#include "project/wishing.h"

namespace tenter::desktop::panels {

/// Wishes on the role that is worked on, for the widths of the band in view where edits go to that, else for
/// all widths, or for any others that are asked for; a wish holds in every variant. Then how sizes are sought
/// for all roles.
class WishesPanel : public Panel {
    Q_OBJECT

public:
    explicit WishesPanel(Context& context, QWidget* parent = nullptr);
    void refresh() override;

private:
    /// A wish as its editor shows it, and back; `{}` unsets it.
    template <class T>
    struct Manner {
        std::function<project::Json(const T&)> shown;
        std::function<std::optional<T>(const project::Json&)> read;
    };
    template <class T>
    ProjectRow* wish(const QString& title, const QString& words,
                     std::optional<T> project::RoleWishes::*member, controls::Editor* editor,
                     Manner<T> manner);
    ProjectRow* number(const QString& title, const QString& words,
                       std::optional<double> project::RoleWishes::*member, controls::AmountKind kind,
                       double times = 1);
    template <class T>
    ProjectRow* choice(const QString& title, const QString& words,
                       std::optional<T> project::RoleWishes::*member, controls::Editor* editor,
                       std::vector<std::pair<std::string, T>> choices);
    template <class T>
    ProjectRow* general(const QString& title, const QString& words, std::optional<T> project::Wishes::*member,
                        controls::Editor* editor, Manner<T> manner);
    void addRatio();
    void addGeneral();
    void addWithout();
    /// The other role, and how many times its size, from the sizes here.
    void relate(project::RoleWishes& entry, const std::string& other);
    /// Changes the entry for the role and widths at hand; what cannot be is told and left.
    void change(project::Project& project, const std::function<void(project::RoleWishes&)>& how);
    void addWidths();
    [[nodiscard]] project::WishedWidths widths() const;
    /// Those that follow from where edits go.
    [[nodiscard]] project::WishedWidths widthsInScope() const;
    /// What is wished for some widths becomes a wish for others; those are then at hand.
    void moveTo(project::Project& project, const project::WishedWidths& widths);
    void offerWidths();
    [[nodiscard]] project::RoleWishes wished(const project::Project& project) const;
    [[nodiscard]] const project::RoleWishes* said(const project::Project& project) const;
    void count(controls::Fold* fold, const std::vector<ProjectRow*>& rows);

    QLabel* title_;
    controls::ListEditor* for_ = nullptr;
    ProjectRow *above_ = nullptr, *upTo_ = nullptr;
    std::optional<project::WishedWidths> others_;  ///< asked for, of `ofRole_`
    std::string ofRole_;
    bool areCrossed_ = false;  ///< as they are typed
    bool isRefused_ = false;   ///< the wish as it was typed last
    std::vector<project::WishedWidths> offeredWidths_;
    controls::Fold *more_ = nullptr, *seeking_ = nullptr;
    std::vector<ProjectRow*> moreRows_, seekingRows_;
    controls::ListEditor* ratioTo_ = nullptr;
    std::vector<std::string> offered_;  ///< roles that a ratio may be to
    ProjectRow *times_ = nullptr, *manner_ = nullptr, *variants_ = nullptr;
    SolveBox* solve_;
};

}  // namespace tenter::desktop::panels
