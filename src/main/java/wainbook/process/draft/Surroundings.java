package wainbook.process.draft;

import java.util.List;
import java.util.Set;
import wainbook.process.CheckSheet;
import wainbook.process.Known;

/** What stands in force round a draft: what it may refer to, and what refers to it. */
public record Surroundings(Known known, List<CheckSheet> sheets, Set<String> stations) {

    public Surroundings {
        sheets = List.copyOf(sheets);
        stations = Set.copyOf(stations);
    }

    Set<String> stages() {
        return known.stages();
    }

    boolean kindOfInstrument(String kind) {
        return known.instrumentKinds().contains(kind);
    }

    boolean sheet(String code) {
        return sheets.stream().anyMatch(sheet -> sheet.code().equals(code));
    }
}
