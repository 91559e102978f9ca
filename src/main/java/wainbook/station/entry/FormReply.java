package wainbook.station.entry;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wainbook.page.Form;
import wainbook.process.determination.ToRead;
import wainbook.process.joint.CheckWay;
import wainbook.process.joint.Joint;
import wainbook.process.sheet.Ask;
import wainbook.station.Reply;

/**
 * A reply as a form sends it. Decimals take a point or a comma, never groups; what cannot be read is a fault at its field,
 * and everything typed stays.
 */
public record FormReply(Reply reply, Form form) {

    public static FormReply of(Ask ask, Optional<Joint> joint, Map<String, String> typed) {
        var reading = new Reader(typed);
        Reply.Builder reply = Reply.with();
        if (ask instanceof Ask.Measure) {
            reading.decimal("reading").ifPresent(reply::reading);
        } else if (ask instanceof Ask.Quantity) {
            reading.decimal("quantity").ifPresent(reply::quantity);
        } else if (ask instanceof Ask.Table table) {
            reply.cells(reading.decimals(
                    "cell", table.rows().size() * table.columns().size()));
        } else if (ask instanceof Ask.Tighten) {
            int bolts = joint.map(Joint::bolts).orElse(0);
            reply.boltsNm(reading.decimals("bolt", bolts));
            if (joint.flatMap(Joint::angle).isPresent()) {
                reply.anglesDeg(reading.decimals("angle", bolts));
            }
        }
        if (ask instanceof Ask.Recheck) {
            int bolts = joint.map(Joint::bolts).orElse(0);
            if (joint.map(CheckWay::of).filter(way -> way == CheckWay.BY_MARK).isPresent()) {
                reading.decimal("reading").ifPresent(reply::reading);
                reply.found(reading.found("check", bolts));
            } else {
                reply.boltsNm(reading.decimals("bolt", bolts));
            }
        }
        if (ask instanceof Ask.Determine determine) {
            determine
                    .readings()
                    .forEach(wanted -> reading.of(wanted).ifPresent(value -> reply.reading(wanted.name(), value)));
        }
        if (ask instanceof Ask.Attended) {
            reading.text("place").ifPresent(place -> reply.reading("place", place));
            reading.text("second").ifPresent(second -> reply.reading("second", second));
        }
        reading.text("sure").ifPresent(yes -> reply.sure());
        reading.text("serial").ifPresent(reply::serial);
        reading.text("lot").ifPresent(reply::lot);
        reading.text("choice").ifPresent(reply::choice);
        reading.text("words").ifPresent(reply::words);
        reading.text("version").ifPresent(reply::version);
        return new FormReply(reply.build(), reading.form);
    }

    private static final class Reader {
        private Form form;

        Reader(Map<String, String> typed) {
            form = Form.of(new LinkedHashMap<>(typed));
        }

        Optional<String> text(String field) {
            return Optional.of(form.value(field).strip()).filter(text -> !text.isEmpty());
        }

        Optional<BigDecimal> decimal(String field) {
            Optional<String> text = text(field);
            if (text.isEmpty()) {
                return Optional.empty();
            }
            String plain = text.get().replace(',', '.').replace('−', '-');
            if (!plain.matches("[+-]?\\d{1,9}(\\.\\d{1,9})?")) {
                form = form.wrong(field, "station.notANumber", text.get());
                return Optional.empty();
            }
            return Optional.of(new BigDecimal(plain));
        }

        Optional<String> of(ToRead wanted) {
            return wanted.choice() || wanted.code()
                    ? text(wanted.name())
                    : decimal(wanted.name()).map(BigDecimal::toPlainString);
        }

        /** One finding a fastener; those that are missing are told at their fields. */
        List<CheckWay.Found> found(String name, int count) {
            List<CheckWay.Found> all = new ArrayList<>();
            for (int i = 1; i <= count; i++) {
                String typed = form.value(name + i);
                Optional<CheckWay.Found> one = Arrays.stream(CheckWay.Found.values())
                        .filter(found -> found.name().equals(typed))
                        .findFirst();
                if (one.isEmpty()) {
                    form = form.wrong(name + i, "station.findingMissing", i);
                }
                one.ifPresent(all::add);
            }
            return all;
        }

        /** The fields numbered from 1; all of them or none. */
        List<BigDecimal> decimals(String name, int count) {
            List<BigDecimal> numbers = new ArrayList<>();
            boolean any = false;
            for (int i = 1; i <= count; i++) {
                any |= text(name + i).isPresent();
            }
            for (int i = 1; any && i <= count; i++) {
                if (text(name + i).isEmpty()) {
                    form = form.wrong(name + i, "station.valueMissing", i);
                }
                decimal(name + i).ifPresent(numbers::add);
            }
            return numbers;
        }
    }
}
