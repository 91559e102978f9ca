package wainbook.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Properties;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every text that code or a page asks for is there, its arguments fit, and no text stands anywhere else. */
class TextsTest {

    private static final Path CODE = Path.of("src/main/java");
    private static final Path TEMPLATES = Path.of("src/main/resources/templates");
    private static final Path MESSAGES = Path.of("src/main/resources/messages");

    private static final Pattern SAY = Pattern.compile("\\bsay:([a-z]+)\\.([a-zA-Z0-9]+)(\\()?");
    private static final Pattern ASK =
            Pattern.compile("\\b(Reason|Words)\\.of\\(\\s*\"([a-z]+\\.[a-zA-Z0-9]+)\"(?=\\s*[,)])");
    private static final Pattern UNITS = Pattern.compile("\\b(Nm|kg|mm|min|h|V|kV|A|Hz|m|t|s|%|WB-\\d+)\\b|[ΩµM]+");

    @Test
    void every_template_asks_for_texts_that_are_there_and_gives_what_they_need() {
        List<String> wrong = new ArrayList<>();
        for (Path file : files(TEMPLATES, ".html")) {
            String text = read(file);
            Matcher said = SAY.matcher(text);
            while (said.find()) {
                int given =
                        said.group(3) == null ? 0 : arguments(text, said.end()).size();
                check(file + " say:", said.group(1) + "." + said.group(2), given, wrong);
            }
        }
        assertThat(wrong).isEmpty();
    }

    @Test
    void no_text_is_given_twice_since_the_later_would_silently_win() {
        List<String> twice = new ArrayList<>();
        for (Path file : files(MESSAGES, ".properties")) {
            var seen = new HashSet<String>();
            read(file)
                    .lines()
                    .filter(line -> line.matches("[A-Za-z].*?=.*"))
                    .map(line -> line.substring(0, line.indexOf('=')).strip())
                    .filter(key -> !seen.add(key))
                    .forEach(key -> twice.add(file + ": " + key));
        }
        assertThat(twice).isEmpty();
    }

    @Test
    void every_reason_and_text_in_code_is_there_and_gets_what_it_needs() {
        List<String> wrong = new ArrayList<>();
        for (Path file : files(CODE, ".java")) {
            String text = read(file);
            Matcher asked = ASK.matcher(text);
            while (asked.find()) {
                boolean reason = asked.group(1).equals("Reason");
                int given = arguments(text, asked.start() + asked.group(1).length() + ".of(".length())
                                .size()
                        - (reason ? 2 : 1);
                check(file + " ", asked.group(2), given, wrong);
                if (reason
                        && Words.find(asked.group(2))
                                .filter(TextsTest::saysWhatToDo)
                                .isEmpty()) {
                    wrong.add(file + " " + asked.group(2) + " does not end in a sentence that says what to do");
                }
            }
        }
        assertThat(wrong).isEmpty();
    }

    @Test
    void no_template_holds_text_of_its_own() {
        List<String> wrong = new ArrayList<>();
        for (Path file : files(TEMPLATES, ".html")) {
            String bare = read(file)
                    .replaceAll("\\{#size}[a-z -]+\\{/size}", " ")
                    .replaceAll("(?s)\\{!.*?!}|<!--.*?-->", " ")
                    .replaceAll("(?s)\\{[^{}]*}", " ")
                    .replaceAll("(?s)<[^<>]*>", "\n")
                    .replaceAll("&[a-zA-Z#0-9]+;", " ");
            bare.lines()
                    .map(line -> UNITS.matcher(line).replaceAll("").strip())
                    .filter(line -> line.matches(".*\\p{L}.*"))
                    .forEach(line -> wrong.add(file + ": " + line));
        }
        assertThat(wrong).isEmpty();
    }

    @Test
    void no_template_holds_a_style_or_a_script() {
        List<String> wrong = new ArrayList<>();
        for (Path file : files(TEMPLATES, ".html")) {
            Matcher found = Pattern.compile("<style|<script(?! src=)|\\bstyle=|\\bon[a-z]+=|hx-on|javascript:")
                    .matcher(read(file));
            while (found.find()) {
                wrong.add(file + ": " + found.group());
            }
        }
        assertThat(wrong).isEmpty();
    }

    @Test
    void every_text_is_sound() throws IOException {
        List<String> wrong = new ArrayList<>();
        for (Path file : files(MESSAGES, ".properties")) {
            Properties texts = new Properties();
            try (var reader = Files.newBufferedReader(file)) {
                texts.load(reader);
            }
            texts.forEach((key, text) -> {
                if (((String) text).contains("'") || ((String) text).contains("!")) {
                    wrong.add(file + " " + key + " holds an ASCII apostrophe or an exclamation mark");
                }
                try {
                    argumentsOf((String) text);
                } catch (IllegalArgumentException e) {
                    wrong.add(file + " " + key + ": " + e.getMessage());
                }
            });
        }
        assertThat(wrong).isEmpty();
    }

    private static void check(String where, String key, int given, List<String> wrong) {
        Words.find(key)
                .ifPresentOrElse(
                        pattern -> {
                            int needed = argumentsOf(pattern);
                            if (needed > given) {
                                wrong.add(where + key + " needs " + needed + " arguments and gets " + given);
                            }
                        },
                        () -> wrong.add(where + key + " has no text"));
    }

    private static int argumentsOf(String pattern) {
        return new MessageFormat(pattern, Words.LOCALE).getFormatsByArgumentIndex().length;
    }

    private static boolean saysWhatToDo(String pattern) {
        return !Refusal.parts(pattern).get(2).isEmpty();
    }

    /** Splits what follows an opening bracket at its own commas, up to its closing one. */
    static List<String> arguments(String text, int from) {
        List<String> arguments = new ArrayList<>();
        int depth = 0;
        char quote = 0;
        int start = from;
        for (int i = from; i < text.length(); i++) {
            char c = text.charAt(i);
            if (quote != 0) {
                quote = c == quote && text.charAt(i - 1) != '\\' ? 0 : quote;
            } else if (c == '"' || c == '\'') {
                quote = c;
            } else if (depth == 0 && (c == ',' || c == ')')) {
                arguments.add(text.substring(start, i).strip());
                start = i + 1;
                if (c == ')') {
                    break;
                }
            } else if ("([{".indexOf(c) >= 0) {
                depth++;
            } else if (")]}".indexOf(c) >= 0) {
                depth--;
            }
        }
        return arguments.size() == 1 && arguments.get(0).isEmpty() ? List.of() : arguments;
    }

    @Test
    void arguments_are_split_at_their_own_commas() {
        assertThat(arguments("a, f(b, c), \"d, e)\")", 0)).containsExactly("a", "f(b, c)", "\"d, e)\"");
        assertThat(arguments(")", 0)).isEmpty();
    }

    private static List<Path> files(Path root, String ending) {
        try (Stream<Path> all = Files.walk(root)) {
            return all.filter(file -> file.toString().endsWith(ending)).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
