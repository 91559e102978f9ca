package wainbook.process.page;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import wainbook.act.Reason;
import wainbook.page.Filled;
import wainbook.page.Words;
import wainbook.process.Stage;
import wainbook.process.draft.About;
import wainbook.process.draft.DraftRules;
import wainbook.process.draft.Drafted;
import wainbook.process.draft.InWorks;
import wainbook.process.draft.Part;
import wainbook.process.draft.Revisions;
import wainbook.process.draft.Revisions.Kept;
import wainbook.process.draft.SideBySide;
import wainbook.process.draft.SideBySide.PartChange;
import wainbook.process.page.form.PartForm;

/** A draft as its authors and the second person see it: what it says, what is wrong with it, what it changes. */
public record DraftView(DraftRules rules, Filled filled) {

    static String standing(Revisions revisions) {
        return revisions
                .draft()
                .map(kept -> Words.of(kept.proposed().isPresent() ? "process.stateProposed" : "process.stateDraft"))
                .orElseGet(() -> Words.of("process.stateNone"));
    }

    public Revisions revisions() {
        return rules.revisions();
    }

    public String name() {
        return PaperView.name(revisions().about());
    }

    public String standing() {
        return standing(revisions());
    }

    public String path() {
        return revisions().about().path();
    }

    public boolean plan() {
        return revisions().about().thing() == About.Thing.PLAN;
    }

    public Optional<Kept> draft() {
        return revisions().draft();
    }

    public Kept kept() {
        return draft().orElseThrow();
    }

    public boolean proposed() {
        return draft().flatMap(Kept::proposed).isPresent();
    }

    public boolean own() {
        return revisions().authors().contains(rules.who());
    }

    public long seen() {
        return revisions().seen();
    }

    public UUID actId() {
        return UUID.randomUUID();
    }

    public boolean baseMoved() {
        return draft().filter(kept -> kept.base() != revisions().revision()).isPresent();
    }

    public Map<Part.Group, List<Part>> groups() {
        var groups = new LinkedHashMap<Part.Group, List<Part>>();
        PartForm.of(revisions().about().thing())
                .forEach(form -> groups.put(
                        form.group(),
                        kept().what().parts().stream()
                                .filter(part -> part.group() == form.group())
                                .toList()));
        return groups;
    }

    public String heading(Part.Group group) {
        return Words.of("process.group." + group);
    }

    public String adding(Part.Group group) {
        return Words.of("process.add." + group);
    }

    public boolean adds(Part.Group group) {
        return form(group).keep().adds();
    }

    public boolean mayMove(Part part, boolean up) {
        return !form(part.group()).moved(kept().what(), part.key(), up).equals(kept().what());
    }

    public boolean mayGo(Part part) {
        return form(part.group()).mayGo(kept().what(), before(), part.key());
    }

    /** A leg is called by the title of its stage. */
    public String title(Part part) {
        return part.group() == Part.Group.LEG
                ? rules.surroundings().stage(part.key()).map(Stage::title).orElse(part.title())
                : part.title();
    }

    private PartForm<?, ?> form(Part.Group group) {
        return PartForm.of(revisions().about().thing(), group).orElseThrow();
    }

    public List<Reason> faults() {
        return draft().map(kept -> kept.what().faults(rules.surroundings())).orElse(List.of());
    }

    /** The faults of one part, in words: they stand at it while it is written. */
    public List<String> faults(Part part) {
        return faults().stream()
                .filter(fault -> isOf(fault, part))
                .map(fault -> Words.of(fault.key(), fault.arguments().toArray()))
                .toList();
    }

    /** Cautions about one part that bar nothing, in words. */
    public List<String> remarks(Part part) {
        return kept().what().remarks(rules.surroundings()).stream()
                .filter(remark -> remark.arguments().get(0).equals(part.key()))
                .map(remark -> Words.of(remark.key(), remark.arguments().toArray()))
                .toList();
    }

    /** What is wrong with a whole paper stands at its head. */
    private boolean isOf(Reason fault, Part part) {
        String about = fault.arguments().get(0);
        boolean ofTheWhole = part.group() == Part.Group.HEAD
                && about.equals(revisions().about().called());
        return ofTheWhole || about.equals(part.key());
    }

    public SideBySide sideBySide() {
        return SideBySide.between(
                before().map(Drafted::parts).orElse(List.of()), kept().what().parts());
    }

    private Optional<Drafted> before() {
        return revisions().inForce().map(Revisions.Version::what);
    }

    public Optional<String> meaning(PartChange change) {
        return before().flatMap(former -> ChangesView.meaning(former, kept().what(), change));
    }

    public List<Reason> againstProposing() {
        return lifted(rules.againstProposing(seen()));
    }

    public List<Reason> againstReleasing() {
        return lifted(rules.againstReleasing(seen()));
    }

    /** Each fault of a part leads to the form in which the part is written. */
    private List<Reason> lifted(List<Reason> against) {
        List<Reason> faults = faults();
        return against.stream()
                .map(reason -> reason.lift().isPresent() || !faults.contains(reason)
                        ? reason
                        : kept().what().parts().stream()
                                .filter(part -> isOf(reason, part))
                                .findFirst()
                                .map(part -> reason.liftedAt(
                                        path() + "/draft/" + part.group().word() + "/" + part.key()))
                                .orElse(reason))
                .toList();
    }

    /** What a release means for the vehicles, by the sort of paper. */
    public String meaning() {
        return Words.of("process.meaning." + revisions().about().thing());
    }

    /** The vehicles whose isolation rests on the plan that this one would replace. */
    public String isolatedNow() {
        return plan()
                ? rules.surroundings().vehiclesOf(revisions().about().called()).stream()
                        .filter(InWorks.Vehicle::isolated)
                        .map(InWorks.Vehicle::order)
                        .collect(Collectors.joining(", "))
                : "";
    }

    public int nextRevision() {
        return revisions().revision() + 1;
    }
}
