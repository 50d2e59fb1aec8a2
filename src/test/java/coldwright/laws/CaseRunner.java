package coldwright.laws;

import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.InvocationInterceptor;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;
import org.junit.jupiter.api.extension.ReflectiveInvocationContext;
import org.junit.platform.commons.support.ReflectionSupport;

import java.lang.reflect.Method;
import java.util.function.Consumer;

/**
 * Runs the cases of a law within one test: a report of each case would take longer than the case.
 */
final class CaseRunner implements ParameterResolver, InvocationInterceptor {
    private static final long FIRST_SEED = Long.getLong("laws.seed", 1);
    private static final int TIMES = Integer.getInteger("laws.cases", 1);

    @Override
    public boolean supportsParameter(ParameterContext parameter, ExtensionContext context) {
        return parameter.getParameter().getType() == Draw.class;
    }

    @Override
    public Draw resolveParameter(ParameterContext parameter, ExtensionContext context) {
        return new Draw(FIRST_SEED);
    }

    @Override
    public void interceptTestMethod(
            Invocation<Void> invocation,
            ReflectiveInvocationContext<Method> method,
            ExtensionContext context) {
        invocation.skip();
        Method law = method.getExecutable();
        Object test = method.getTarget().orElseThrow();
        run(
                TIMES * law.getAnnotation(Cases.class).value(),
                FIRST_SEED,
                draw -> ReflectionSupport.invokeMethod(law, test, draw));
    }

    /**
     * Runs a law.
     *
     * @throws AssertionError if a case fails: with its seed, what it drew and why it failed
     */
    static void run(int cases, long firstSeed, Consumer<Draw> law) {
        for (int i = 0; i < cases; i++) {
            Draw draw = new Draw(firstSeed + i);
            try {
                law.accept(draw);
            } catch (Throwable e) {
                throw new AssertionError(
                        "case %d of %d fails; run it first with -Dlaws.seed=%d%ndrawn: %s%n%s"
                                .formatted(i + 1, cases, firstSeed + i, draw, e),
                        e);
            }
        }
    }
}
