package wainbook.paper.page;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.ws.rs.NotFoundException;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import wainbook.act.Moment;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.isolation.paper.OnPaperSaying.OnPaper;
import wainbook.isolation.paper.PaperIsolations;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.matter.MatterSaying.NonconformityOpened;
import wainbook.order.WorkOrder.Phase;
import wainbook.order.WorkOrderRow;
import wainbook.page.Filled;
import wainbook.page.Formats;
import wainbook.page.Leaf;
import wainbook.page.Option;
import wainbook.page.Refusal;
import wainbook.page.Words;
import wainbook.paper.Comparing;
import wainbook.paper.PaperForm;
import wainbook.paper.PaperForm.State;
import wainbook.paper.PaperForms;
import wainbook.paper.PaperSaying.Transcribed;
import wainbook.paper.Using;
import wainbook.paper.Written;
import wainbook.paper.page.sheet.PermitSections;
import wainbook.paper.page.sheet.Section;
import wainbook.paper.page.sheet.SheetLook;
import wainbook.permit.PermitSaying;
import wainbook.station.StationSaying.Observed;
import wainbook.station.StationSaying.TakenFromPaper;
import wainbook.station.paper.PaperItem;
import wainbook.station.words.SayingInWords;
import wainbook.works.shift.WorksDay;

/** Reads forms for whoever looks at them. */
@ApplicationScoped
class PaperLook {

    static final int LEAF = 50;

    private final Ledger ledger;
    private final Using using;
    private final Comparing comparing;
    private final SheetLook sheets;
    private final WorksDay day;

    PaperLook(Ledger ledger, Using using, Comparing comparing, SheetLook sheets, WorksDay day) {
        this.ledger = ledger;
        this.using = using;
        this.comparing = comparing;
        this.sheets = sheets;
        this.day = day;
    }

    PaperForms forms() {
        return PaperForms.of(ledger.history(Subject.works()));
    }

    PaperForm known(String code) {
        return forms().code(code).orElseThrow(NotFoundException::new);
    }

    /** Newest first. */
    List<FormLine> lines(String state, String text) {
        return forms().all().stream()
                .sorted(Comparator.comparing(PaperForm::number).reversed())
                .map(FormLine::new)
                .filter(line -> state.isEmpty() || line.form().state().name().equals(state))
                .filter(line -> holds(line, text.toLowerCase(Locale.ROOT)))
                .toList();
    }

    private static boolean holds(FormLine line, String text) {
        return (line.code() + " " + line.vehicle() + " " + line.sort())
                .toLowerCase(Locale.ROOT)
                .contains(text);
    }

    FormsView list(String state, String text, int page, Filled filled) {
        List<FormLine> all = lines(state, text);
        var leaf = new Leaf(page, LEAF, all.size(), "/paper?state=" + state + "&text=" + text);
        long attention = lines("", "").stream()
                .filter(line ->
                        line.form().state() == State.IN_USE || line.form().state() == State.WAITING)
                .count();
        List<FormLine> shown =
                all.stream().skip((long) (leaf.number() - 1) * LEAF).limit(LEAF).toList();
        return new FormsView(shown, attention, leaf, state, text, vehicles(), filled);
    }

    /** What is in the works, at a place of the line or beside it. */
    List<Option> vehicles() {
        return WorkOrderRow.all().stream()
                .filter(row -> row.phase != Phase.HANDED_OVER && row.phase != Phase.ORDERED)
                .map(row -> new Option(row.number, row.place == null ? row.number : row.number + ", " + row.place))
                .toList();
    }

    /** Vehicles at a stage: those that have a check sheet in hand. */
    List<String> atStages() {
        return WorkOrderRow.all().stream()
                .filter(row -> row.stage != null && (row.phase == Phase.ON_LINE || row.phase == Phase.DONOR_RECEIVED))
                .map(row -> row.number)
                .toList();
    }

    FormView form(PaperForm form, Filled filled, Moment now) {
        List<String> notShown = form.agreed().stream()
                .map(entry -> ((Transcribed) entry.saying()).vehicle())
                .flatMap(vehicle -> PaperIsolations.of(ledger.history(Subject.workOrder(vehicle))).written().stream())
                .filter(paper -> paper.form().equals(form.code()))
                .flatMap(paper -> paper.notShown().stream())
                .map(Refusal::bare)
                .toList();
        return new FormView(new FormLine(form), vehicles(), using.againstEnding(form, now), notShown, filled);
    }

    TranscribeView transcribe(PaperForm form, String vehicle, String photograph, Filled filled) {
        Optional<History> history = Optional.of(vehicle)
                .filter(text -> text.matches(wainbook.order.Numbers.FORM))
                .map(text -> ledger.history(Subject.workOrder(text)))
                .filter(known -> !known.isEmpty());
        List<Section> sections = switch (form.sort()) {
            case ITEMS -> List.of();
            case ISOLATION ->
                history.map(known -> sheets.isolation(form, known).all()).orElse(List.of());
            case PERMIT -> List.of(PermitSections.signs());
        };
        return new TranscribeView(
                new FormLine(form), vehicle, photograph, vehicles(), sheets.items(form), sections, filled);
    }

    CompareView compare(PaperForm form, Filled filled, Moment now) {
        Entry waiting = form.waiting().orElseThrow(NotFoundException::new);
        var said = (Transcribed) waiting.saying();
        Outcome<List<Saying>> lands = comparing.lands(ledger.history(Subject.workOrder(said.vehicle())), waiting, now);
        List<Reason> own = comparing.against(Optional.of(form), form.number(), said.transcription(), now.who());
        Map<String, String> titles = sheets.items(form).stream()
                .collect(Collectors.toMap(PaperItem::key, PaperItem::title, (one, other) -> one));
        return new CompareView(
                new FormLine(form),
                said,
                waiting.moment().who(),
                waiting.moment().at(),
                new WrittenInWords(new Formats(day.zone()), titles).of(Written.of(said)),
                lands.fold(sayings -> inWords(sayings, titles), reasons -> List.of()),
                own.isEmpty() ? lands.reasons() : own,
                filled);
    }

    /** What would stand at the vehicle, in words. */
    private static List<String> inWords(List<Saying> sayings, Map<String, String> titles) {
        return sayings.stream()
                .filter(said -> !(said instanceof TakenFromPaper))
                .map(said -> inWords(said, titles))
                .toList();
    }

    private static String inWords(Saying said, Map<String, String> titles) {
        if (said instanceof Observed observed) {
            return Words.of(
                    "paper.landsObserved", title(observed.about().item(), titles), bare(observed.notCountedFor()));
        }
        if (said instanceof wainbook.station.StationSaying.Result result) {
            return Words.of("paper.landsResult", title(result.about().item(), titles), SayingInWords.of(result));
        }
        if (said instanceof OnPaper paper) {
            return paper.notShown().isEmpty()
                    ? Words.of("paper.landsIsolation")
                    : Words.of("paper.landsNotShown", bare(paper.notShown()));
        }
        if (said instanceof PermitSaying.OnPaper paper) {
            return paper.remarks().isEmpty()
                    ? Words.of("paper.landsPermit")
                    : Words.of(
                            "paper.landsPermitNot",
                            String.join(
                                    " ", paper.remarks().stream().map(Words::of).toList()));
        }
        return said instanceof NonconformityOpened opened
                ? Words.of("paper.landsNonconformity", opened.what())
                : Words.of("paper.landsMore");
    }

    private static String title(String item, Map<String, String> titles) {
        return titles.getOrDefault(item, item);
    }

    private static String bare(List<String> keys) {
        return String.join(" ", keys.stream().distinct().map(Refusal::bare).toList());
    }
}
