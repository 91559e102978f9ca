package wainbook.page.api;

import jakarta.ws.rs.WebApplicationException;
import jakarta.ws.rs.ext.Provider;
import jakarta.ws.rs.ext.ReaderInterceptor;
import jakarta.ws.rs.ext.ReaderInterceptorContext;
import java.io.IOException;
import wainbook.ledger.bytes.Whole;
import wainbook.page.Words;

/** Refuses a body in which a field that cannot be absent is: said at the door, so that no act meets a null. */
@Provider
public class WholeBody implements ReaderInterceptor {

    @Override
    public Object aroundReadFrom(ReaderInterceptorContext context) throws IOException {
        Object body = context.proceed();
        if (body == null && context.getType().isRecord()) {
            throw refused(Words.of("page.bodyMissing"));
        }
        return body instanceof Record ? checked(body) : body;
    }

    /** The same for what was read out of a body later. */
    public static <T> T checked(T body) {
        try {
            return Whole.check(body);
        } catch (IllegalArgumentException missing) {
            throw refused(missing.getMessage().replaceFirst("^[^.]*\\.", ""));
        }
    }

    private static WebApplicationException refused(String detail) {
        return new WebApplicationException(
                Problem.of(400, "page.problemBody", detail).response());
    }
}
