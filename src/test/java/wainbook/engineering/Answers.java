package wainbook.engineering;

import java.util.List;

/** Takes an answer apart for a test, which fails if it is of another kind. */
public final class Answers {

    private Answers() {}

    public static <R extends Record> Working<R> working(Answer<R> answer) {
        return answer.<Working<R>>fold(
                working -> working, faults -> unexpected(faults), refusal -> unexpected(refusal));
    }

    public static <R extends Record> R results(Answer<R> answer) {
        return working(answer).results();
    }

    public static Verdict verdict(Answer<?> answer) {
        return working(answer).verdict();
    }

    public static String refusal(Answer<?> answer) {
        return answer.<String>fold(
                working -> unexpected(working), faults -> unexpected(faults), refusal -> refusal.key());
    }

    public static List<String> faultyFields(Answer<?> answer) {
        return answer.<List<String>>fold(
                working -> unexpected(working),
                faults -> faults.stream().map(Fault::field).toList(),
                refusal -> unexpected(refusal));
    }

    @SuppressWarnings("TypeParameterUnusedInFormals")
    private static <T> T unexpected(Object got) {
        throw new AssertionError("not the answer expected: " + got);
    }
}
