package wainbook.isolation.page;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.time.format.DateTimeParseException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wainbook.isolation.Danger;
import wainbook.isolation.Step;
import wainbook.isolation.step.Wanted;
import wainbook.page.Form;
import wainbook.process.plan.Point;

/**
 * Reads what a form sent for a step. Decimals take a point or a comma, times are the works' local times still to come; what
 * cannot be read is a fault at its field, and everything typed stays.
 */
final class SentForm {

    private static final int LONGEST = 400;

    private final Step step;
    private final Map<String, List<String>> sent;
    private final ZonedDateTime now;
    private final ObjectMapper json;
    private Form form;

    private SentForm(Step step, Map<String, List<String>> sent, ZonedDateTime now, ObjectMapper json) {
        this.step = step;
        this.sent = sent;
        this.now = now;
        this.json = json;
        var typed = new LinkedHashMap<String, String>();
        sent.forEach((field, values) -> typed.put(field, String.join("\n", values)));
        typed.remove("password");
        this.form = Form.of(typed);
    }

    /** What was read, and the form as it stands; nothing was read where the form has faults. */
    record Read(Optional<Wanted> wanted, Form form) {}

    static Read of(Step step, Map<String, List<String>> sent, ZonedDateTime now, ObjectMapper json) {
        return new SentForm(step, sent, now, json).read();
    }

    private Read read() {
        ObjectNode body = json.createObjectNode();
        for (RecordComponent component : Wanted.BY_STEP.get(step).getRecordComponents()) {
            component(component, body);
        }
        if (!form.right()) {
            return new Read(Optional.empty(), form);
        }
        try {
            return new Read(Optional.of(json.convertValue(body, Wanted.BY_STEP.get(step))), form);
        } catch (IllegalArgumentException noneOfTheChoices) {
            return new Read(Optional.empty(), form.wrong("id", "isolating.notFromThePage"));
        }
    }

    private void component(RecordComponent component, ObjectNode body) {
        String name = component.getName();
        if (name.equals("readings")) {
            readings(body);
        } else if (component.getType() == List.class) {
            var list = body.putArray(name);
            sent.getOrDefault(name, List.of()).forEach(list::add);
        } else if (component.getType() == boolean.class) {
            truth(name, body);
        } else if (component.getType() == BigDecimal.class) {
            decimal(name).ifPresent(number -> body.put(name, number));
        } else if (component.getType() == Instant.class) {
            time(name).ifPresent(time -> body.put(name, time.toString()));
        } else if (component.getType() == int.class) {
            text(name, true).ifPresent(number -> body.put(name, number));
        } else {
            boolean needed = !optional(component.getGenericType()) && step != Step.REPORT_DANGER;
            text(field(name), needed).ifPresent(text -> body.put(name, text));
            if (step == Step.REPORT_DANGER && !body.has(name)) {
                body.put(name, name.equals("danger") ? Danger.OTHER.name() : "–");
            }
        }
    }

    /** The person who works live has a field of another name than the instrument. */
    private String field(String name) {
        return name.equals("tester") && step == Step.ISSUE_LIVE_PERMIT ? "liveTester" : name;
    }

    private void readings(ObjectNode body) {
        var list = body.putArray("readings");
        for (Point.Pair pair : Point.Pair.values()) {
            String field = "volt-" + pair.name();
            if (sent.containsKey(field)) {
                decimal(field)
                        .ifPresent(volt ->
                                list.addObject().put("pair", pair.name()).put("volt", volt));
            }
        }
    }

    private void truth(String name, ObjectNode body) {
        boolean tick = name.equals("shownOpen") || name.equals("clear");
        Optional<String> said = text(name, !tick);
        body.put(name, said.filter(word -> word.equals("true")).isPresent());
    }

    private Optional<String> text(String name, boolean needed) {
        Optional<String> text = sent.getOrDefault(name, List.of()).stream()
                .findFirst()
                .map(String::strip)
                .filter(said -> !said.isEmpty());
        if (text.isEmpty() && needed) {
            form = form.wrong(name, "isolating.missing");
        }
        if (text.filter(said -> said.length() > LONGEST).isPresent()) {
            form = form.wrong(name, "isolating.tooLong", LONGEST);
        }
        return text;
    }

    private Optional<BigDecimal> decimal(String name) {
        Optional<String> text =
                text(name, true).map(said -> said.replace(',', '.').replace('−', '-'));
        if (text.filter(plain -> !plain.matches("[+-]?\\d{1,6}(\\.\\d{1,6})?")).isPresent()) {
            form = form.wrong(name, "isolating.notVolts", text.get());
            return Optional.empty();
        }
        return text.map(BigDecimal::new);
    }

    /** The next time the works' clocks show it. */
    private Optional<Instant> time(String name) {
        return text(name, true).flatMap(typed -> {
            try {
                ZonedDateTime today = now.with(LocalTime.parse(typed));
                return Optional.of((today.isAfter(now) ? today : today.plusDays(1)).toInstant());
            } catch (DateTimeParseException unreadable) {
                form = form.wrong(name, "isolating.notATime", typed);
                return Optional.<Instant>empty();
            }
        });
    }

    private static boolean optional(Type type) {
        return type instanceof ParameterizedType held && held.getRawType() == Optional.class;
    }
}
