package trialwood.walk;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The way from a phone to the application; it can be cut, and mended at the same place. While it is
 * cut whoever calls is hung up on at once: the place is kept, so that nobody else can take it.
 */
class Cable implements AutoCloseable {

  private final int far;
  private final Set<Socket> ends = ConcurrentHashMap.newKeySet();
  private final ServerSocket near = new ServerSocket(0, 50, InetAddress.getLoopbackAddress());
  private volatile boolean cut;

  /**
   * @param far the application's port
   */
  Cable(int far) throws IOException {
    this.far = far;
    start(this::accept);
  }

  /** Where the phone finds the application. */
  int port() {
    return near.getLocalPort();
  }

  void cut() throws IOException {
    cut = true;
    for (Socket end : ends) {
      end.close();
    }
    ends.clear();
  }

  void mend() {
    cut = false;
  }

  private void accept() {
    while (!near.isClosed()) {
      try {
        Socket phone = near.accept();
        if (cut) {
          phone.close();
          continue;
        }
        Socket application = new Socket(InetAddress.getLoopbackAddress(), far);
        ends.add(phone);
        ends.add(application);
        start(() -> carry(phone, application));
        start(() -> carry(application, phone));
      } catch (IOException gone) {
        continue;
      }
    }
  }

  private static void carry(Socket from, Socket to) {
    try (from;
        to) {
      from.getInputStream().transferTo(to.getOutputStream());
    } catch (IOException cut) {
      return;
    }
  }

  private static void start(Runnable work) {
    Thread thread = new Thread(work, "cable");
    thread.setDaemon(true);
    thread.start();
  }

  @Override
  public void close() {
    try {
      cut();
      near.close();
    } catch (IOException unclosed) {
      throw new UncheckedIOException(unclosed);
    }
  }
}
