package wainbook.setup;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import wainbook.setup.files.WorksZip;

/** The files of a works in a test's hands: to plant faults in, and to pack. */
public final class Folder {

    public static final Path DEMO = Path.of("demo-fleet");
    public static final Path SMALL = Path.of("src/test/resources/small-works");

    /** A comma outside quotation marks. */
    private static final String COMMA = ",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)";

    private final Map<String, String> texts = new TreeMap<>();

    public static Folder copyOf(Path original) {
        var copy = new Folder();
        try (Stream<Path> all = Files.walk(original)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                copy.texts.put(original.relativize(file).toString().replace('\\', '/'), Files.readString(file));
            }
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
        return copy;
    }

    public byte[] packed() {
        return WorksZip.pack(texts);
    }

    public Map<String, String> texts() {
        return texts;
    }

    public Folder with(String file, String text) {
        texts.put(file, text);
        return this;
    }

    public Folder replace(String file, String old, String planted) {
        assertThat(texts.get(file)).contains(old);
        return with(file, texts.get(file).replace(old, planted));
    }

    /** Puts something into the cell of a row, counted from 0 below the header; tells the place of the cell. */
    public String plantCell(String file, int row, String column, String planted) {
        List<String> lines = new ArrayList<>(texts.get(file).lines().toList());
        List<Integer> rows = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            if (!lines.get(i).startsWith("#") && !lines.get(i).isBlank()) {
                rows.add(i);
            }
        }
        List<String> header = Arrays.asList(lines.get(rows.get(0)).split(","));
        int line = rows.get(row + 1);
        String[] cells = lines.get(line).split(COMMA, -1);
        int cell = header.indexOf(column);
        assertThat(cells[cell]).isNotEqualTo(planted);
        cells[cell] = planted;
        lines.set(line, String.join(",", cells));
        texts.put(file, String.join("\n", lines) + "\n");
        return file + ":" + (line + 1) + ":" + (cell + 1);
    }

    /** What stands in a cell. */
    public String cell(String file, int row, String column) {
        List<String> lines = texts.get(file)
                .lines()
                .filter(line -> !line.startsWith("#") && !line.isBlank())
                .toList();
        return lines.get(row + 1)
                .split(",", -1)[Arrays.asList(lines.get(0).split(",")).indexOf(column)];
    }

    /** Puts something in the place of the first group of a pattern; tells where it stands. */
    public String plantText(String file, String pattern, String planted) {
        String text = texts.get(file);
        Matcher found = Pattern.compile(pattern).matcher(text);
        assertThat(found.find()).as(file + " has " + pattern).isTrue();
        texts.put(file, text.substring(0, found.start(1)) + planted + text.substring(found.end(1)));
        return place(file, text, found.start(1));
    }

    /** Where the first group of a pattern stands. */
    public String placeOf(String file, String pattern) {
        Matcher found = Pattern.compile(pattern).matcher(texts.get(file));
        assertThat(found.find()).as(file + " has " + pattern).isTrue();
        return place(file, texts.get(file), found.start(1));
    }

    /** The first file of a folder that has the pattern. */
    public String fileWith(String within, String pattern) {
        return texts.entrySet().stream()
                .filter(text -> text.getKey().startsWith(within + "/"))
                .filter(text ->
                        Pattern.compile(pattern).matcher(text.getValue()).find())
                .map(Map.Entry::getKey)
                .findFirst()
                .orElseThrow(() -> new AssertionError("no file in " + within + " has " + pattern));
    }

    private static String place(String file, String text, int at) {
        String before = text.substring(0, at);
        long line = before.chars().filter(sign -> sign == '\n').count() + 1;
        return file + ":" + line + ":" + (at - before.lastIndexOf('\n'));
    }
}
