package trialwood.testing;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.sql.Connection;
import javax.sql.DataSource;
import org.springframework.beans.factory.config.BeanPostProcessor;

/** Counts the statements that reach the database, whoever sends them. */
public class Statements implements BeanPostProcessor {

  private int sent;

  /** How many statements the work sends. */
  public int of(Runnable work) {
    int before = sent;
    work.run();
    return sent - before;
  }

  @Override
  public Object postProcessAfterInitialization(Object bean, String name) {
    return bean instanceof DataSource source ? watched(DataSource.class, source) : bean;
  }

  private <T> T watched(Class<T> type, T real) {
    return type.cast(
        Proxy.newProxyInstance(
            type.getClassLoader(),
            new Class<?>[] {type},
            (proxy, method, arguments) -> {
              if (method.getName().equals("prepareStatement")) {
                sent++;
              }
              try {
                Object answer = method.invoke(real, arguments);
                return answer instanceof Connection connection && type == DataSource.class
                    ? watched(Connection.class, connection)
                    : answer;
              } catch (InvocationTargetException refused) {
                throw refused.getCause();
              }
            }));
  }
}
