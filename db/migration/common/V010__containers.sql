-- Lots of potted plants, where they came from, what became of them, and the plants with a number of their own.

create table lot (
  unit_id            uuid primary key references unit,
  container_class_id uuid not null references container_class,
  litres             numeric(8, 3) check (litres > 0),
  potted_on          date not null,
  potted             integer not null check (potted > 0),
  yard               varchar(80),
  note               varchar(300),
  person_id          uuid references person,
  account            varchar(60) not null,
  recorded_at        timestamp(6) with time zone not null
);

-- liners from a tray, or plants shifted from a lot of a smaller class
create table lot_source (
  id        uuid primary key,
  lot_id    uuid not null references lot,
  source_id uuid not null references unit,
  number    integer not null check (number > 0),
  unique (lot_id, source_id),
  check (source_id <> lot_id)
);

create index lot_source_source on lot_source (source_id);

create table lot_count (
  id               uuid primary key,
  lot_id           uuid not null references lot,
  on_date          date not null,
  alive            integer not null check (alive >= 0),
  saleable         integer,
  note             varchar(300),
  person_id        uuid references person,
  account          varchar(60) not null,
  recorded_at      timestamp(6) with time zone not null,
  supersedes_id    uuid unique references lot_count,
  supersede_reason varchar(300),
  check (saleable between 0 and alive)
);

create index lot_count_lot on lot_count (lot_id, on_date);

create table lot_loss (
  id               uuid primary key,
  lot_id           uuid not null references lot,
  on_date          date not null,
  number           integer not null check (number > 0),
  reason           varchar(300) not null,
  person_id        uuid references person,
  account          varchar(60) not null,
  recorded_at      timestamp(6) with time zone not null,
  supersedes_id    uuid unique references lot_loss,
  supersede_reason varchar(300)
);

create index lot_loss_lot on lot_loss (lot_id);

-- plants that left the lot alive or were destroyed on purpose
create table lot_outgoing (
  id               uuid primary key,
  lot_id           uuid not null references lot,
  on_date          date not null,
  number           integer not null check (number > 0),
  way              varchar(12) not null check (way in ('DISPOSED', 'TRANSFERRED', 'SHIFTED')),
  to_whom          varchar(120),
  agreement        varchar(60),
  purpose          varchar(120),
  person_id        uuid references person,
  account          varchar(60) not null,
  recorded_at      timestamp(6) with time zone not null,
  supersedes_id    uuid unique references lot_outgoing,
  supersede_reason varchar(300)
);

create index lot_outgoing_lot on lot_outgoing (lot_id);

create table plant (
  unit_id     uuid primary key references unit,
  number      integer not null check (number > 0),
  account     varchar(60) not null,
  recorded_at timestamp(6) with time zone not null
);

-- the lot a plant stands in; a shifted plant keeps its number
create table plant_place (
  id          uuid primary key,
  plant_id    uuid not null references plant,
  lot_id      uuid not null references lot,
  from_date   date not null,
  person_id   uuid references person,
  account     varchar(60) not null,
  recorded_at timestamp(6) with time zone not null,
  unique (plant_id, from_date)
);

create index plant_place_lot on plant_place (lot_id);
