package wainbook.process.page;

import java.util.List;
import java.util.Optional;
import wainbook.page.Filled;
import wainbook.page.Words;
import wainbook.process.draft.About.Thing;
import wainbook.process.draft.DraftRules;
import wainbook.process.draft.Drafted;
import wainbook.process.draft.Part;
import wainbook.process.draft.Revisions;
import wainbook.process.page.form.Input;
import wainbook.process.page.form.PartForm;

/**
 * The form of one part of a draft.
 *
 * @param key of the part as it is kept; absent for one that is to be added
 * @param seen the number of the draft's last entry when the form was first drawn
 */
public record PartView(DraftRules rules, PartForm<?, ?> form, Optional<String> key, long seen, Filled filled) {

    public String name() {
        return PaperView.name(rules.revisions().about());
    }

    public String draftPath() {
        return rules.revisions().about().path() + "/draft";
    }

    /** The part's place on the page of the draft. */
    public String back() {
        return draftPath() + "#" + form.group().word()
                + key.map(known -> "-" + known).orElse("");
    }

    public String path() {
        return draftPath() + "/" + form.group().word()
                + key.map(known -> "/" + known).orElse("");
    }

    public String title() {
        return key.map(known -> Words.of("process.editPart", Words.of("process.one." + form.group()), known))
                .orElseGet(() -> Words.of("process.add." + form.group()));
    }

    public boolean item() {
        return form.group() == Part.Group.ITEM;
    }

    public boolean dangerous() {
        return switch (form.group()) {
            case JOINT, SOURCE, POINT, CHECK, ITEM -> true;
            case HEAD -> rules.revisions().about().thing() == Thing.PLAN;
            case LEG, STAGE, STATION -> false;
        };
    }

    public List<Input> inputs() {
        boolean codeStays =
                key.filter(known -> form.codeStays(inForce(), known)).isPresent();
        return form.inputs(draft(), rules.surroundings(), filled.form().typed()).stream()
                .filter(input -> !codeStays || !input.name().equals(PartForm.KEY))
                .toList();
    }

    /** What is wrong with the part as it was kept last. */
    public List<String> faults() {
        return key.map(known -> draft().faults(rules.surroundings()).stream()
                        .filter(fault -> fault.arguments().get(0).equals(known))
                        .map(fault -> Words.of(fault.key(), fault.arguments().toArray()))
                        .toList())
                .orElse(List.of());
    }

    /** Cautions about the part as it was kept last, which bar nothing. */
    public List<String> remarks() {
        return key.map(known -> draft().remarks(rules.surroundings()).stream()
                        .filter(remark -> remark.arguments().get(0).equals(known))
                        .map(remark -> Words.of(remark.key(), remark.arguments().toArray()))
                        .toList())
                .orElse(List.of());
    }

    private Optional<Drafted> inForce() {
        return rules.revisions().inForce().map(Revisions.Version::what);
    }

    private Drafted draft() {
        return rules.revisions().draft().orElseThrow().what();
    }
}
