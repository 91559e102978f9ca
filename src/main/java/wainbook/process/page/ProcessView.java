package wainbook.process.page;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import wainbook.page.Form;
import wainbook.page.Words;
import wainbook.process.Route;
import wainbook.process.Stage;
import wainbook.process.Station;
import wainbook.process.draft.About;
import wainbook.process.draft.Drafted;
import wainbook.process.draft.JointsDraft;
import wainbook.process.draft.PlanDraft;
import wainbook.process.draft.Revisions;
import wainbook.process.draft.RouteDraft;
import wainbook.process.draft.SheetDraft;
import wainbook.process.draft.StagesDraft;
import wainbook.process.joint.Joint;
import wainbook.process.joint.JointClass;
import wainbook.process.sheet.CheckSheet;

/** The process as one page shows it: what fits the search, and every draft in hand. */
public record ProcessView(List<Revisions> papers, String search, boolean mayDraft) {

    /** A stage with its places. */
    public record StageRow(Stage stage, List<Station> stations) {}

    /** A paper that is in force. */
    public record Row<D>(Revisions paper, D what) {
        public String path() {
            return paper.about().path();
        }

        public int revision() {
            return paper.revision();
        }
    }

    /** How many joints there are of a class. */
    public record ClassRow(JointClass jointClass, List<Joint> joints) {
        public String inWords() {
            return Words.of("process.jointClass." + jointClass);
        }
    }

    public ProcessView {
        papers = List.copyOf(papers);
    }

    public Form form() {
        return Form.EMPTY.with("search", search);
    }

    public String csv() {
        return "/process/sheets.csv?search=" + URLEncoder.encode(search, StandardCharsets.UTF_8);
    }

    public List<StageRow> stages() {
        return inForce(StagesDraft.class)
                .flatMap(row -> row.what().stages().stream()
                        .map(stage -> new StageRow(stage, at(row.what(), Optional.of(stage.code()))))
                        .filter(one -> fits(one.stage().code(), one.stage().title())
                                || one.stations().stream().anyMatch(here -> fits(here.code(), here.title()))))
                .toList();
    }

    /** Places off the line. */
    public List<Station> elsewhere() {
        return inForce(StagesDraft.class)
                .flatMap(row -> at(row.what(), Optional.empty()).stream())
                .filter(station -> fits(station.code(), station.title()))
                .toList();
    }

    private static List<Station> at(StagesDraft all, Optional<String> stage) {
        return all.stations().stream()
                .filter(station -> station.stage().equals(stage))
                .toList();
    }

    public List<Row<CheckSheet>> sheets() {
        return rows(SheetDraft.class, SheetDraft::sheet, sheet -> List.of(sheet.code(), sheet.title(), sheet.stage()));
    }

    public List<Row<Route>> routes() {
        return rows(
                RouteDraft.class,
                RouteDraft::route,
                route -> List.of(route.code(), route.title(), route.vehicleKind()));
    }

    /** Whether it begins with a donor, or takes a vehicle that is brought back. */
    public String begins(Route route) {
        boolean donor = route.bare(code -> inForce(SheetDraft.class)
                        .map(row -> row.what().sheet())
                        .filter(sheet -> sheet.code().equals(code))
                        .findFirst())
                .isPresent();
        return Words.of(donor ? "process.beginsWithDonor" : "process.beginsBroughtBack");
    }

    public List<Row<PlanDraft>> plans() {
        return rows(PlanDraft.class, plan -> plan, plan -> List.of(plan.code(), plan.variant()));
    }

    public List<ClassRow> joints() {
        List<Joint> all = inForce(JointsDraft.class)
                .flatMap(row -> row.what().joints().stream())
                .filter(joint -> fits(joint.code(), joint.title()))
                .toList();
        return Arrays.stream(JointClass.values())
                .map(one -> new ClassRow(
                        one,
                        all.stream().filter(joint -> joint.jointClass() == one).toList()))
                .filter(row -> !row.joints().isEmpty())
                .toList();
    }

    public List<Revisions> drafts() {
        return papers.stream().filter(paper -> paper.draft().isPresent()).toList();
    }

    public boolean nothing() {
        return stages().isEmpty()
                && elsewhere().isEmpty()
                && sheets().isEmpty()
                && routes().isEmpty()
                && plans().isEmpty()
                && joints().isEmpty();
    }

    /** A name for a paper that says what it is. */
    public String name(Revisions paper) {
        return PaperView.name(paper.about());
    }

    public String standing(Revisions paper) {
        return DraftView.standing(paper);
    }

    public String stagesPath() {
        return About.STAGES.path();
    }

    private <D extends Drafted> Stream<Row<D>> inForce(Class<D> type) {
        return papers.stream()
                .flatMap(paper -> paper.inForce().stream()
                        .filter(version -> type.isInstance(version.what()))
                        .map(version -> new Row<>(paper, type.cast(version.what()))));
    }

    private <D extends Drafted, T> List<Row<T>> rows(
            Class<D> type, Function<D, T> what, Function<T, List<String>> words) {
        return inForce(type)
                .map(row -> new Row<>(row.paper(), what.apply(row.what())))
                .filter(row -> fits(words.apply(row.what()).toArray(String[]::new)))
                .toList();
    }

    private boolean fits(String... words) {
        return Arrays.stream(words)
                .anyMatch(word -> word.toLowerCase(Words.LOCALE).contains(search.toLowerCase(Words.LOCALE)));
    }
}
