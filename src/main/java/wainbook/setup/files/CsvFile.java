package wainbook.setup.files;

import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.csv.CsvFactory;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A CSV file (RFC 4180, comma, UTF-8) with its column names in the first row. Lines that begin with # are comments; an empty
 * cell says nothing.
 */
record CsvFile(String name, List<String> header, List<Row> rows) {

    /** One row and the line it begins at. */
    record Row(int line, List<String> cells) {}

    static Optional<CsvFile> read(TextFile file, List<Fault> faults) {
        List<Row> rows = new ArrayList<>();
        try (CsvParser parser = CsvFactory.builder()
                .enable(CsvParser.Feature.WRAP_AS_ARRAY)
                .enable(CsvParser.Feature.TRIM_SPACES)
                .enable(CsvParser.Feature.SKIP_EMPTY_LINES)
                .build()
                .createParser(file.text())) {
            parser.setSchema(CsvSchema.emptySchema().withComments());
            parser.nextToken();
            while (parser.nextToken() == JsonToken.START_ARRAY) {
                rows.add(row(parser));
            }
        } catch (IOException broken) {
            faults.add(Fault.of(
                    Place.at(
                            file.name(),
                            rows.isEmpty() ? 1 : rows.get(rows.size() - 1).line() + 1,
                            1),
                    "notCsv",
                    broken.getMessage().lines().findFirst().orElse(""),
                    "CSV"));
            return Optional.empty();
        }
        if (rows.isEmpty()) {
            faults.add(Fault.of(Place.of(file.name()), "fileEmpty", "nothing", "a row with the column names"));
            return Optional.empty();
        }
        return Optional.of(new CsvFile(file.name(), rows.get(0).cells(), List.copyOf(rows.subList(1, rows.size()))));
    }

    private static Row row(CsvParser parser) throws IOException {
        int line = 0;
        List<String> cells = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            if (cells.isEmpty()) {
                line = parser.currentTokenLocation().getLineNr();
            }
            cells.add(parser.getText());
        }
        return new Row(line, List.copyOf(cells));
    }

    /** Rows of one type, each with its line. Several values in one cell are parted by semicolons where a list is wanted. */
    <T> List<Located<T>> bind(Class<T> type, Columns columns, List<Fault> faults) {
        if (!headerIsRight(columns, faults)) {
            return List.of();
        }
        List<Located<T>> bound = new ArrayList<>();
        for (Row row : rows) {
            Place begin = Place.at(name, row.line(), 1);
            if (row.cells().size() != header.size()) {
                faults.add(Fault.of(begin, "wrongCellCount", row.cells().size() + " cells", header.size() + " cells"));
            } else {
                Binding.CELLS
                        .bind(tree(row, columns), type, pointer -> cell(begin, pointer), faults)
                        .ifPresent(value ->
                                bound.add(new Located<>(value, begin, column -> cell(begin, "/" + column))));
            }
        }
        return bound;
    }

    private boolean headerIsRight(Columns columns, List<Fault> faults) {
        int before = faults.size();
        Set<String> seen = new HashSet<>();
        int line = rows.isEmpty() ? 1 : Math.max(1, rows.get(0).line() - 1);
        for (String column : header) {
            Place place = Place.at(name, line, header.indexOf(column) + 1).field(column);
            if (!seen.add(column)) {
                faults.add(Fault.of(place, "fieldTwice", column, "one of it"));
            } else if (!columns.all().contains(column)) {
                faults.add(Fault.of(place, "unknownField", column, String.join(", ", columns.all())));
            }
        }
        columns.required().stream()
                .filter(column -> !seen.contains(column))
                .forEach(column -> faults.add(Fault.of(
                        Place.at(name, line, 1).field(column), "fieldMissing", String.join(", ", header), column)));
        return faults.size() == before;
    }

    private ObjectNode tree(Row row, Columns columns) {
        ObjectNode tree = JsonNodeFactory.instance.objectNode();
        for (int i = 0; i < header.size(); i++) {
            String cell = row.cells().get(i);
            if (columns.lists().contains(header.get(i))) {
                var list = tree.putArray(header.get(i));
                for (String part : cell.split(";")) {
                    list.add(part.strip());
                }
            } else if (!cell.isEmpty()) {
                tree.put(header.get(i), cell);
            }
        }
        return tree;
    }

    private Place cell(Place begin, String pointer) {
        if (pointer.isEmpty()) {
            return begin;
        }
        String column = pointer.substring(1).split("/")[0];
        return Place.at(name, begin.line().orElse(1), header.indexOf(column) + 1)
                .field(column);
    }
}
