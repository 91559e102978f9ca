package wainbook.process.sheet;

import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import java.math.BigDecimal;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wainbook.process.Code;
import wainbook.process.determination.Given;
import wainbook.process.determination.Method;
import wainbook.process.determination.ToRead;
import wainbook.process.stream.MaterialStream;

/** What a check item asks of the person at the vehicle: what an entry for it must hold to count. */
@JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "kind")
@JsonSubTypes({
    @JsonSubTypes.Type(value = Ask.Confirm.class, name = "confirm"),
    @JsonSubTypes.Type(value = Ask.Measure.class, name = "measure"),
    @JsonSubTypes.Type(value = Ask.Table.class, name = "table"),
    @JsonSubTypes.Type(value = Ask.Tighten.class, name = "tighten"),
    @JsonSubTypes.Type(value = Ask.Recheck.class, name = "recheck"),
    @JsonSubTypes.Type(value = Ask.Determine.class, name = "determine"),
    @JsonSubTypes.Type(value = Ask.Serial.class, name = "serial"),
    @JsonSubTypes.Type(value = Ask.Lot.class, name = "lot"),
    @JsonSubTypes.Type(value = Ask.Quantity.class, name = "quantity"),
    @JsonSubTypes.Type(value = Ask.Recount.class, name = "recount"),
    @JsonSubTypes.Type(value = Ask.Choice.class, name = "choice"),
    @JsonSubTypes.Type(value = Ask.Attended.class, name = "attended"),
    @JsonSubTypes.Type(value = Ask.Text.class, name = "text"),
    @JsonSubTypes.Type(value = Ask.Wait.class, name = "wait"),
    @JsonSubTypes.Type(value = Ask.Software.class, name = "software"),
    @JsonSubTypes.Type(value = Ask.File.class, name = "file"),
    @JsonSubTypes.Type(value = Ask.Photograph.class, name = "photograph")
})
public sealed interface Ask {

    /** Whether a reading is judged by a limit of the law. */
    default boolean legallyLimited() {
        return false;
    }

    /** Rows or parts that may follow the facts of a vehicle. */
    default List<String> rowsByFact() {
        return List.of();
    }

    /** As it is asked at a vehicle of which these facts are stated. */
    default Ask on(Map<String, String> stated) {
        return this;
    }

    /** That it is done. For a joint that may be ticked, the joint's code. */
    record Confirm(Optional<String> joint) implements Ask {
        public Confirm {
            joint.ifPresent(code -> Code.checked("a joint", code));
        }
    }

    /**
     * One reading.
     *
     * @param quantity what is measured
     * @param unit as printed beside the reading
     * @param works what the works asks
     * @param legal what the law asks, never laxer than the works
     * @param instrumentKind the kind of instrument; absent where none is needed, a count for example
     * @param calculation the calculation that judges the readings, where one number alone does not
     */
    record Measure(
            String quantity,
            String unit,
            Optional<Limits> works,
            Optional<Limits> legal,
            Optional<String> instrumentKind,
            Optional<String> calculation)
            implements Ask {
        public Measure {
            Code.titled("a quantity", quantity);
            if (unit.isBlank()) {
                throw new IllegalArgumentException("a measurement has a unit; write 1 for a plain number");
            }
        }

        @Override
        public boolean legallyLimited() {
            return legal.isPresent();
        }
    }

    /**
     * A reading for every row in every column.
     *
     * @param instrumentKind the kind of instrument; absent where none is needed, or in sheets of a time when tables named none
     */
    record Table(List<Column> columns, List<String> rows, Optional<String> instrumentKind) implements Ask {
        public Table {
            columns = distinct("columns", columns);
            rows = distinct("rows", rows);
        }

        @Override
        public List<String> rowsByFact() {
            return rows;
        }

        /** Where the vehicle has none of the rows, the sheet's own stand: an item that does not apply says so itself. */
        @Override
        public Ask on(Map<String, String> stated) {
            List<String> own = VehicleRows.of(rows, stated);
            return own.isEmpty() ? this : new Table(columns, own, instrumentKind);
        }

        @Override
        public boolean legallyLimited() {
            return columns.stream().anyMatch(column -> column.legal().isPresent());
        }

        /** What is read in one column, with its limits. */
        public record Column(String title, String unit, Optional<Limits> works, Optional<Limits> legal) {
            public Column {
                Code.titled("a column", title);
            }
        }
    }

    /** Every fastener of a joint, as its class asks. */
    record Tighten(String joint) implements Ask {
        public Tighten {
            Code.checked("a joint", joint);
        }
    }

    /**
     * A tightened joint checked again, in the way that its kind asks for. Never a tightening.
     *
     * @param afterMinutes how long after it was tightened at the soonest, standing or moved: joints settle
     * @param byKm after how many kilometres at the latest; where it is given, the operator may be charged with it
     */
    record Recheck(String joint, Optional<Integer> afterMinutes, Optional<Integer> byKm) implements Ask {
        public Recheck {
            Code.checked("a joint", joint);
            afterMinutes.filter(minutes -> minutes < 1 || minutes > 10_000).ifPresent(minutes -> {
                throw new IllegalArgumentException("a second check waits 1 to 10000 minutes, not " + minutes);
            });
            byKm.filter(km -> km < 1 || km > 10_000).ifPresent(km -> {
                throw new IllegalArgumentException("a second check is due by 1 to 10000 km, not " + km);
            });
        }
    }

    /**
     * A quantity determined from readings by a calculation, with its uncertainty. What the law asks lies in the calculation and
     * what is given to it.
     *
     * @param quantity what is determined
     * @param parts whose readings are summed, where the method is one of parts
     * @param works what the works asks of it, in the method's unit
     */
    record Determine(
            String quantity,
            Method method,
            List<Given> given,
            List<String> parts,
            Optional<Limits> works,
            Optional<String> instrumentKind)
            implements Ask {
        public Determine {
            Code.titled("a quantity", quantity);
            given = List.copyOf(given);
            parts = List.copyOf(parts);
            if (method.ofParts() == parts.isEmpty()) {
                throw new IllegalArgumentException("parts are named for a method that sums them, and for no other");
            }
        }

        @Override
        public List<String> rowsByFact() {
            return parts;
        }

        @Override
        public Ask on(Map<String, String> stated) {
            List<String> own = VehicleRows.of(parts, stated);
            return own.isEmpty() ? this : new Determine(quantity, method, given, own, works, instrumentKind);
        }

        /** What is read at the vehicle, in order. */
        public List<ToRead> readings() {
            return method.readings(parts);
        }

        @Override
        public boolean legallyLimited() {
            return method.insulation() || method == Method.BONDING || method == Method.Y_CAPACITORS;
        }
    }

    /** The serial number of a part. The pattern is a regular expression without look-around, for the whole text. */
    record Serial(String part, Optional<String> pattern) implements Ask {
        public Serial {
            Code.checked("a part", part);
        }
    }

    /** The lot that a part comes from. */
    record Lot(String part) implements Ask {
        public Lot {
            Code.checked("a part", part);
        }
    }

    /**
     * How much went in or came out.
     *
     * @param stream what comes out, where something does: so that the quantity becomes a mass and is looked after
     */
    record Quantity(String unit, Optional<BigDecimal> expected, Optional<MaterialStream> stream) implements Ask {
        public Quantity {
            if (unit.isBlank()) {
                throw new IllegalArgumentException("a quantity has a unit");
            }
        }

        public static Quantity of(String unit, Optional<BigDecimal> expected) {
            return new Quantity(unit, expected, Optional.empty());
        }
    }

    /**
     * Counted again: as many as were counted at an earlier item of the sheet, tools before a cover closes for example.
     *
     * @param item key of the earlier item, which asks for a quantity
     */
    record Recount(String item, String unit) implements Ask {
        public Recount {
            Code.checked("an item's key", item);
            if (unit.isBlank()) {
                throw new IllegalArgumentException("a count has a unit");
            }
        }

        /** As it is asked at a vehicle, once it is known how many were counted. */
        public Quantity after(Optional<BigDecimal> counted) {
            return Quantity.of(unit, counted);
        }
    }

    /** One of several findings, some of which pass. */
    record Choice(List<Option> options) implements Ask {
        public Choice {
            options = distinct("options", options);
            if (options.size() < 2 || options.stream().noneMatch(Option::passes)) {
                throw new IllegalArgumentException("a choice has two options or more, and one that passes");
            }
        }

        /** A finding in words, and whether the item passes with it. */
        public record Option(String text, boolean passes) {
            public Option {
                Code.titled("an option", text);
            }
        }
    }

    /** A finding at work that takes two: the first energising, the first movement. Asks for the place and the second person. */
    record Attended(List<Choice.Option> options) implements Ask {
        public Attended {
            options = new Choice(options).options();
        }
    }

    /** Words. */
    record Text(Optional<String> prompt, int maxLength) implements Ask {
        public Text {
            if (maxLength < 1 || maxLength > 4000) {
                throw new IllegalArgumentException("a text is 1 to 4000 characters long, not " + maxLength);
            }
        }
    }

    /** That clock time has passed: curing, settling, a leak test. */
    record Wait(int minutes) implements Ask {
        public Wait {
            if (minutes < 1) {
                throw new IllegalArgumentException("a wait is a minute or more, not " + minutes);
            }
        }
    }

    /** The version that a control unit reports. */
    record Software(String module, String version) implements Ask {
        public Software {
            Code.checked("a module", module);
            if (version.isBlank()) {
                throw new IllegalArgumentException("a software item names the version it expects");
            }
        }
    }

    /** A file, of one of the media types of RFC 6838. */
    record File(List<String> mediaTypes) implements Ask {
        public File {
            mediaTypes = distinct("media types", mediaTypes);
            for (String type : mediaTypes) {
                if (!type.matches("[a-z]+/[a-z0-9.+-]+")) {
                    throw new IllegalArgumentException("a media type looks like application/pdf, not: " + type);
                }
            }
        }
    }

    /** A picture, taken then and there. */
    record Photograph() implements Ask {}

    private static <T> List<T> distinct(String what, List<T> list) {
        if (list.isEmpty() || new HashSet<>(list).size() < list.size()) {
            throw new IllegalArgumentException(what + " are at least one, and no two alike");
        }
        return List.copyOf(list);
    }
}
