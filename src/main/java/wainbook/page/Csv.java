package wainbook.page;

import com.fasterxml.jackson.databind.SequenceWriter;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.Response;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;

/** A list as a file for a spreadsheet (RFC 4180, UTF-8). */
public final class Csv {

    private static final CsvMapper MAPPER = new CsvMapper();

    private Csv() {}

    public static Response file(String name, List<String> header, List<List<String>> rows) {
        return Response.ok(text(header, rows), "text/csv; charset=utf-8")
                .header(HttpHeaders.CONTENT_DISPOSITION, "attachment; filename=\"" + name + ".csv\"")
                .build();
    }

    static String text(List<String> header, List<List<String>> rows) {
        var text = new StringWriter();
        try (SequenceWriter lines = MAPPER.writer().writeValues(text)) {
            lines.write(header);
            for (List<String> row : rows) {
                lines.write(row.stream().map(Csv::harmless).toList());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    /** A spreadsheet takes what begins with one of these for a formula and would run it. */
    private static String harmless(String cell) {
        return cell.matches("(?s)[=+\\-@\\t\\r].*") ? "'" + cell : cell;
    }
}
