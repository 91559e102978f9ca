package wainbook.handover.page;

import jakarta.ws.rs.core.Response;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import wainbook.handover.document.Document;
import wainbook.handover.document.DocumentLine;
import wainbook.handover.document.DocumentSet;
import wainbook.page.Csv;
import wainbook.page.Words;

/** What a page of documents shows, for a spreadsheet. */
record DocumentsTable(String name, List<List<String>> rows) {

    static DocumentsTable of(HandoverView own) {
        List<List<String>> rows = own.rules().documents().stream()
                .flatMap(set -> set.documents().stream().map(document -> cells(set.set(), own.line(document), "")))
                .toList();
        return new DocumentsTable("documents-" + own.number(), rows);
    }

    /** What falls away stands last, under the set that asks for it. */
    static DocumentsTable of(AnotherMarket asked) {
        DocumentSet supposed = asked.supposed();
        Map<String, String> changes = new HashMap<>();
        asked.parts()
                .forEach(part -> part.lines()
                        .forEach(change -> changes.put(
                                change.line().document().id(), Words.of("handover." + part.anchor() + "Word"))));
        Stream<List<String>> shown = supposed.documents().stream()
                .map(document -> cells(supposed.set(), asked.line(document), changes.getOrDefault(document.id(), "")));
        Stream<List<String>> gone = asked.difference().stream()
                .flatMap(difference -> difference.fallsAway().stream())
                .filter(change -> change.other().isEmpty())
                .map(change -> cells(
                        asked.own().market(),
                        asked.line(change.document()),
                        changes.get(change.document().id())));
        return new DocumentsTable(
                "documents-" + asked.number() + "-" + supposed.set(),
                Stream.concat(shown, gone).toList());
    }

    Response file() {
        return Csv.file(
                name, Arrays.asList(Words.of("handover.documentsCsvHeader").split(";")), rows);
    }

    private static List<String> cells(String set, DocumentLine line, String change) {
        Document document = line.document();
        var source = document.rule().source();
        return List.of(
                set,
                document.id(),
                line.name(),
                change,
                document.requirement().answer().word(),
                line.standing().word(),
                line.because(),
                line.due(),
                line.duty(),
                document.rule().issuer(),
                document.rule().evidence(),
                source.document() + ", " + source.clause(),
                Words.of("handover.known." + source.standing().name()),
                String.join(" ", document.requirement().missingFacts()));
    }
}
