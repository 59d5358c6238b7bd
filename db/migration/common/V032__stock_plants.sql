-- Plants kept for cuttings: where each came from, and what happened to it since.

create table stock_plant (
  unit_id         uuid primary key references unit,
  number          integer not null check (number > 0),
  since_date      date not null,
  place           varchar(80) not null,
  origin_batch_id uuid references batch,
  origin_unit_id  uuid references unit,
  note            varchar(2000),
  person_id       uuid references person,
  account         varchar(60) not null,
  recorded_at     timestamp(6) with time zone not null,
  check (origin_batch_id is null or origin_unit_id is null)
);

create table stock_event (
  id               uuid primary key,
  stock_id         uuid not null references stock_plant,
  on_date          date not null,
  kind             varchar(10) not null check (kind in ('MOVED', 'TESTED', 'DIED')),
  place            varchar(80),
  agent            varchar(80),
  result           varchar(10) check (result in ('NEGATIVE', 'POSITIVE')),
  note             varchar(300),
  person_id        uuid references person,
  account          varchar(60) not null,
  recorded_at      timestamp(6) with time zone not null,
  supersedes_id    uuid unique references stock_event,
  supersede_reason varchar(300),
  check ((kind = 'MOVED') = (place is not null)),
  check ((kind = 'TESTED') = (agent is not null)),
  check ((kind = 'TESTED') = (result is not null))
);

create index stock_event_plant on stock_event (stock_id, kind, on_date);
